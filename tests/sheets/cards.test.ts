import { expect, test } from 'vitest';
import { experiments } from '../../generators/experiments/index.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import { streams } from '../../generators/random.ts';
import { loadWords } from '../../generators/cli/content.ts';
import { cardsPage } from '../../generators/sheets/cards.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { askFor } from '../../generators/sheets/tables.ts';
import { known, tables } from './class.ts';

const { spoken } = loadWords('en', 'resistivity');

test.each(Object.keys(experiments))('%s has a card for each of its wires, with the resistance of the whole wire', (id) => {
  const experiment = experiments[id]!;
  const order = readOrder(`experiment: ${id}\n`, 'order.yaml', known);
  const observed = experiment.observe(askFor(order, order.wires.slice(0, experiment.wires), tables), streams('cards').within(id))!;
  const asks = order.wires.map((wire) => askFor(order, [wire], tables));
  const { cards } = cardsPage(asks, experiment, programOf(experiment, observed), spoken);
  expect(cards).toHaveLength(order.wires.length);
  cards.forEach(({ X }, i) => {
    const { made, diameter, length } = asks[i]!.wire;
    // R = ρ L / A by hand, in m; three figures are printed.
    const ohms = (Number(made.rho) * length * 4) / 100 / (Math.PI * (diameter / 1000) ** 2);
    const [, mantissa, tens = '0'] = /^([\d.]+)(?: \\times 10\^\{(-?\d+)\})?/.exec(X.tex)!;
    const printed = Number(`${mantissa}e${tens}`);
    expect(Math.abs(printed / ohms - 1)).toBeLessThan(0.006);
  });
});

test('settings of the box stand on a card where the wire is all that is balanced, and nowhere else', () => {
  const withSettings = Object.entries(experiments).filter(([id, experiment]) => {
    const order = readOrder(`experiment: ${id}\n`, 'order.yaml', known);
    const observed = experiment.observe(askFor(order, order.wires.slice(0, experiment.wires), tables), streams('cards').within(id))!;
    return cardsPage([askFor(order, order.wires.slice(0, 1), tables)], experiment, programOf(experiment, observed), spoken).cards[0]!.settings;
  });
  const ids = withSettings.map(([id]) => id);
  expect(ids).toEqual(expect.arrayContaining(['resistivity', 'interchange', 'graph']));
  for (const id of ['series-parallel', 'carey-foster', 'kelvin', 'gauge-drill']) expect(ids).not.toContain(id);
});
