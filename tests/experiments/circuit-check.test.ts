import { describe, expect, test } from 'vitest';
import { boxValues } from '../../generators/apparatus/box.ts';
import { makeBridge } from '../../generators/apparatus/bridge.ts';
import { faultNames, withFault } from '../../generators/apparatus/faults.ts';
import { connectionCheck } from '../../generators/apparatus/galvanometer.ts';
import { loadWords } from '../../generators/cli/content.ts';
import type { Ask } from '../../generators/experiments/ask.ts';
import { circuitCheck } from '../../generators/experiments/circuit-check.ts';
import { type Diagnosis, diagnose, diagnoses, faultsBehind } from '../../generators/experiments/diagnosis.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import { dimensionFault } from '../../generators/quantities/dimension.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { streams } from '../../generators/random.ts';
import { conventions } from '../../generators/sheets/conventions.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { documentsOf, issuesOf, known, wordsOf } from '../sheets/class.ts';
import { demo, drillAsks, tables } from './demo.ts';

const asks = (['left', 'right'] as const).flatMap((gap) => [3, 6].flatMap((rows) => drillAsks('circuit-check', { gap, rows })));

/** The verdicts of the key, from a sheet's printed deflections. */
function keyOf(ask: Ask, observed: NonNullable<ReturnType<typeof circuitCheck.observe>>): string[] {
  const steps = programOf(circuitCheck, observed);
  const sheet = { format: 1, edition: 1, experiment: circuitCheck.id, origin: 'generated', form: observed.form, readings: observed.readings, conventions: conventions(demo, ask, circuitCheck, steps.steps) } as const;
  return workOut(sheet, steps).verdicts()['diagnosis']!;
}

function* sets(count: number) {
  for (let i = 0; i < count; i++) {
    const ask = asks[i % asks.length]!;
    const observed = circuitCheck.observe(ask, streams('circuit check').within(i));
    if (observed) yield { ask, observed };
  }
}

test('the expected null point has the dimension of a length, and is that of X = R (100 − l)/l by hand', () => {
  const steps = programOf(circuitCheck, { form: { known: 'left', low: '40', high: '60' } });
  const place = steps.step('place');
  if (place.kind === 'relation') expect(dimensionFault(steps, place, { W: 100, R: 2, X: 3 })).toBeUndefined();
  const readings = { W: '100', X: '3.0', R: ['2.0'], left: ['0.0'], middle: ['0.0'], right: ['0.0'] };
  expect(evaluate(steps, readings, 'even').written.get('place')).toEqual(['40']);
});

describe('a diagnosis', () => {
  // The rules of the connection check, stated by hand; common practice, no source.
  const rules: [left: number, middle: number, right: number, place: number, Diagnosis][] = [
    [-14, 0.5, 13, 48, 'sound'],
    [-3, -0.5, 27, 19, 'unsuitable'],
    [13, 0, -14, 48, 'reversed'],
    [-30, -18, -4, 50, 'to the left'],
    [4, 18, 30, 50, 'to the right'],
    [0, 0, 0, 50, 'nothing'],
    [-20, -7, 8, 50, 'left joint'],
    [-8, 7, 20, 50, 'right joint'],
  ];

  test.each(rules)('of %d, %d and %d divisions, the null expected at %d cm, is: %s', (left, middle, right, place, expected) => {
    expect(diagnose({ left, middle, right }, place, [40, 60])).toBe(expected);
  });

  test('is given for every fault that a bridge can have, and each fault belongs to one', () => {
    expect(rules.map(([, , , , each]) => each).toSorted()).toEqual([...diagnoses].toSorted());
    expect(Object.values(faultsBehind).flat().toSorted()).toEqual([...faultNames].toSorted());
  });

  test('cannot tell an open gap from the other one shorted: both deflect to the same side at both ends', () => {
    const random = streams('check').of('bridge');
    const bridge = makeBridge(tables.bench, random);
    for (const kind of ['to the left', 'to the right'] as const)
      for (const fault of faultsBehind[kind]) {
        const { left, right } = connectionCheck(withFault(bridge, fault, tables.bench, random), tables.bench, { left: 3, right: 3 });
        expect([left.side, right.side], fault).toEqual(kind === 'to the left' ? ['left', 'left'] : ['right', 'right']);
      }
  });
});

test('10 000 circuits and more are what they read on: settings of the box, half divisions up to 30, and one sound circuit at least on each sheet', () => {
  const found = new Set<string>();
  const rule = (kept: boolean, words: string) => void (kept || found.add(words));
  const seen = new Map<string, number>();
  let whole = 0;
  for (const { ask, observed } of sets(2500)) {
    whole += ask.rows;
    const { R, left, middle, right } = observed.readings as Record<string, string[]>;
    const verdicts = keyOf(ask, observed);
    for (const each of verdicts) seen.set(each, (seen.get(each) ?? 0) + 1);
    rule(R!.length === ask.rows && verdicts.length === ask.rows, 'as many circuits as asked for');
    rule(R!.every((text) => boxValues(ask.bench.box.plugs).includes(text)), 'R is a setting of the box');
    rule([left!, middle!, right!].flat().every((text) => /^-?\d{1,2}\.[05]$/.test(text) && Math.abs(Number(text)) <= 30 && text !== '-0.0'), 'half divisions');
    rule(new Set(verdicts).size === ask.rows && verdicts.includes('sound'), 'one sound circuit, and the others differ');
    // A needle read half a division too high or too low leaves the diagnosis as it is.
    const place = evaluate(programOf(circuitCheck, observed), observed.readings, 'even').exact.get('place')!;
    verdicts.forEach((verdict, row) => {
      const at = (column: string[], by: number) => (verdict === 'nothing' ? 0 : Number(column[row]) + by);
      for (const by of [-0.5, 0.5])
        rule(diagnose({ left: at(left!, by), middle: at(middle!, -by), right: at(right!, by) }, place[row]!, ask.window) === verdict, `half a division: ${verdict}`);
    });
  }
  expect([...found]).toEqual([]);
  expect(whole).toBeGreaterThan(10_000);
  for (const each of diagnoses) expect(seen.get(each), each).toBeGreaterThan(500);
});

describe('on paper', () => {
  const order = readOrder('experiment: circuit-check\ndrawn: dial\n', 'order.yaml', known);
  const issues = issuesOf(order);
  const { verdicts, brief } = loadWords('en', 'circuit-check').experiment as unknown as Record<'verdicts' | 'brief', { diagnosis: Record<string, string> }>;
  const documents = documentsOf(order, issues);
  const single = async (kind: string) => [...(await documents)].filter(([file]) => file.includes(`single/${kind}`)).map(([, html]) => wordsOf(html).replace(/\s+/g, ' '));

  test('the worksheet has a place for a diagnosis and dials to read, and gives neither diagnosis nor deflection', async () => {
    for (const [i, words] of (await single('worksheet')).entries()) {
      expect(words.match(/What it shows/g)).toHaveLength(1);
      for (const said of Object.values(verdicts.diagnosis)) expect(words).not.toContain(said.split('{')[0]);
      const readings = ['left', 'middle', 'right'].flatMap((id) => issues[i]!.sheet.readings[id]!).map(Number);
      for (const value of readings.filter((each) => each % 1 !== 0 && Math.abs(each) > 10)) expect(words, String(value)).not.toMatch(new RegExp(`(?<![\\d.])${String(Math.abs(value)).replace('.', '\\.')}(?!\\d)`));
    }
  });

  test('the key and the marking grid give the diagnosis of every circuit', async () => {
    const grid = [...(await documents)].find(([file]) => file.includes('grid'))![1];
    for (const [i, words] of (await single('key')).entries()) {
      const { sheet } = issues[i]!;
      for (const choice of workOut(sheet, programOf(circuitCheck, sheet)).verdicts()['diagnosis']!) {
        expect(words).toContain(verdicts.diagnosis[choice]!.split('{')[0]);
        expect(grid).toContain(`<td>${brief.diagnosis[choice]!}</td>`);
      }
    }
  });
});

describe('the planner refuses, with a reason and what would do,', () => {
  const [ask] = asks;
  const refused = (change: Partial<Ask>) => circuitCheck.plan({ ...ask!, ...change }).unfit;

  test('a window that takes in the ends', () => {
    expect(refused({ window: [20, 80] })).toEqual([expect.stringMatching(/window of 20-80 cm.*inside 30-70/)]);
  });

  test('a wire beside which no bad joint shows', () => {
    expect(refused({ wire: { ...ask!.wire, diameter: 0.1 } })).toContainEqual(expect.stringMatching(/bad joint.*take a wire of less/));
  });

  test('a protective resistance so large that the needle hardly moves', () => {
    const { galvanometer } = tables.bench;
    expect(refused({ bench: { ...tables.bench, galvanometer: { ...galvanometer, protective: 22_000 } } })).toEqual([expect.stringMatching(/protective resistance of 22000 Ω.*smaller/)]);
  });

  test('nothing else', () => {
    expect(asks.flatMap((each) => circuitCheck.plan(each).unfit)).toEqual([]);
  });
});
