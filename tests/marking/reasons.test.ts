import { describe, expect, test } from 'vitest';
import { loadWords } from '../../generators/cli/content.ts';
import { loadMarkingWords } from '../../generators/cli/marking-content.ts';
import { experiments } from '../../generators/experiments/index.ts';
import { type Reason, reasons } from '../../generators/marking/reasons.ts';
import { byEye } from '../../generators/quantities/by-eye.ts';
import { scale } from '../../generators/quantities/evaluate.ts';
import { evaluate } from '../../generators/quantities/mathjs.ts';
import type { Program } from '../../generators/quantities/program.ts';
import type { Computed, Digits, Relation, Summary } from '../../generators/quantities/step.ts';
import { unit } from '../../generators/quantities/unit.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { type Worked, workOut } from '../../generators/sheets/worked.ts';
import { documentsOf, issuesOf, orderOf } from '../sheets/class.ts';
import { classOf, practical } from './classes.ts';

const said = loadMarkingWords('en').reasons;
const SHEETS = 3;
const WIRES: Record<string, string[]> = { 'temperature-coefficient': ['copper, SWG 36, 500 cm'] };
const wordsOf = (experiment: string) => loadWords('en', experiment).spoken;

/** What the words of one end state, read from the formulas as they are printed. */
interface Stated {
  inputs: Record<string, number>;
  between: number[];
  pi?: number;
  every?: { column: string; end: 0 | 1 };
  bestLine?: number;
  byEye?: number;
  rounded?: number;
}

function printedNumber(tex: string): number {
  const [, mantissa, exponent = '0'] = /(-?\d[\d.]*)(?: \\times 10\^\{(-?\d+)\})?/.exec(tex.slice(tex.indexOf('= ') + 1))!;
  return Number(`${mantissa}e${exponent}`);
}

function read(program: Program, step: Computed, { sentence, blanks }: Reason['low']): Stated {
  const stated: Stated = { inputs: {}, between: [] };
  const quantities = step.kind === 'relation' ? program.compiled(step.id).as.names.map((id) => program.step(id)) : [];
  const words = { bestLine: said.bestLine, lineLower: said.lineLower, lineHigher: said.lineHigher, everyLowest: said.everyLowest, everyHighest: said.everyHighest, rounded: said.rounded, choice: said.choice };
  for (const [blank, { tex }] of Object.entries(blanks)) {
    const [kind] = Object.entries(words).find(([, wording]) => sentence.includes(wording.replace('{it}', `{${blank}}`)))!;
    const [left] = tex.split(' = ');
    if (kind === 'choice' && left === '\\pi') stated.pi = tex.endsWith('22/7') ? 22 / 7 : Number(tex.split(' = ')[1]);
    else if (kind === 'choice') {
      const input = quantities.find((quantity) => quantity.tex === left);
      if (input) stated.inputs[input.id] = printedNumber(tex);
      else stated.between.push(printedNumber(tex));
    } else if (kind.startsWith('every')) stated.every = { column: tex, end: kind === 'everyLowest' ? 0 : 1 };
    else if (kind === 'rounded') stated.rounded = printedNumber(tex);
    else if (kind === 'bestLine') stated.bestLine = printedNumber(tex);
    else stated.byEye = (kind === 'lineLower' ? -1 : 1) * printedNumber(tex);
  }
  return stated;
}

/** What the relation comes to with what is stated, by mathjs; one value for each route that has as many lines between. */
function follow({ program, cells, values }: Worked, relation: Relation, row: number, { inputs, between, pi }: Stated): number[] {
  const into = (id: string, value: number) => (relation.si ? scale(value, unit(program.step(id).unit).tens) : value);
  const column = (id: string) => {
    const step = program.step(id);
    // What is not stated has but one value.
    const all = step.kind === 'relation' || step.kind === 'summary' ? cells(id).map(({ accept }) => accept[0]) : values.exact.get(id)!;
    return all.length === 1 ? all[0]! : all[row]!;
  };
  const known = Object.fromEntries(program.compiled(relation.id).as.names.map((id) => [id, into(id, inputs[id] ?? column(id))]));
  const routes = [{ via: [], as: relation.as }, ...(relation.routes ?? [])].filter(({ via }) => via.length === between.length);
  return routes.map(({ via, as }) => {
    const scope: Record<string, number> = { ...known, ...(pi !== undefined && { pi }) };
    via.forEach(({ id }, i) => (scope[id] = between[i]!));
    return scale(evaluate(as, scope) as number, relation.si ? -unit(relation.unit).tens : 0);
  });
}

/** One in the place that a printed range ends with. */
function lastPlace(value: number, digits: Digits): number {
  return 'decimals' in digits ? 10 ** -(digits.decimals + 1) : 10 ** (Math.floor(Math.log10(Math.abs(value))) - digits.figures);
}

function reached(worked: Worked, step: Computed, row: number, stated: Stated): number[] {
  if (stated.rounded !== undefined) return [stated.rounded];
  return beforeRounding(worked, step, row, stated);
}

function beforeRounding(worked: Worked, step: Computed, row: number, stated: Stated): number[] {
  if (stated.every) {
    const { column, end } = stated.every;
    expect(column).toBe(worked.program.step((step as Summary).of[0]!).tex);
    const rows = worked.cells((step as Summary).of[0]!).map(({ accept }) => accept[end]);
    return [rows.reduce((a, b) => a + b) / rows.length];
  }
  if (stated.bestLine !== undefined) return [stated.bestLine + stated.byEye!];
  return follow(worked, step as Relation, row, stated);
}

describe.each(Object.entries(experiments))('%s', (id, experiment) => {
  const { issues } = classOf(SHEETS, `experiment: ${id}\n`, 'reasons', practical, WIRES[id]);

  test('who follows what is printed of a range comes to its ends, as far as they are printed', () => {
    for (const { sheet } of issues) {
      const program = programOf(experiment, sheet);
      const worked = workOut(sheet, program);
      const reasonFor = reasons({ sheet, program, own: {} }, wordsOf(id), said);
      for (const answer of experiment.layout.working) {
        const step = program.step(answer) as Computed;
        worked.cells(answer).forEach(({ accept }, row) => {
          const reason = reasonFor(answer, row);
          if (!reason) return;
          (['low', 'high'] as const).forEach((end, i) => {
            const stated = read(program, step, reason[end]);
            const place = lastPlace(accept[i]!, step.digits);
            const told = `${answer} row ${row + 1}, ${end} ${accept[i]}: ${JSON.stringify(stated)}`;
            expect(Math.min(...reached(worked, step, row, stated).map((value) => Math.abs(value - accept[i]!))), told).toBeLessThanOrEqual(place);
            // Rounding to the digits asked for, or to more, moves a value by half of the last at most.
            const off = Math.min(...beforeRounding(worked, step, row, stated).map((value) => Math.abs(value - accept[i]!)));
            expect(off, told).toBeLessThanOrEqual(6 * place);
          });
        });
      }
    }
  });

  test('where nothing is said, one value alone is rounded', () => {
    for (const { sheet } of issues) {
      const program = programOf(experiment, sheet);
      const worked = workOut(sheet, program);
      const reasonFor = reasons({ sheet, program, own: {} }, wordsOf(id), said);
      for (const answer of experiment.layout.working) {
        worked.cells(answer).forEach(({ accept, exact }, row) => {
          if (reasonFor(answer, row)) return;
          const place = lastPlace(exact, (program.step(answer) as Computed).digits);
          for (const end of accept) expect(Math.abs(end - exact), `${answer} row ${row + 1}`).toBeLessThanOrEqual(5.0001 * place);
        });
      }
    }
  });
});

test('a line by eye is said to lie off by the latitude that it has', () => {
  const { issues: [issue] } = classOf(1, 'experiment: graph\n', 'reasons');
  const program = programOf(experiments['graph']!, issue!.sheet);
  const worked = workOut(issue!.sheet, program);
  const line = program.steps.find((step): step is Summary => step.kind === 'summary' && step.byEye === true)!;
  const slack = byEye(line.by, line.of.map((id) => worked.values.exact.get(id)!));
  const { low, high } = reasons({ sheet: issue!.sheet, program, own: {} }, wordsOf('graph'), said)(line.id, 0)!;
  expect(read(program, line, low).byEye! / -slack).toBeCloseTo(1, 1);
  expect(read(program, line, high).byEye! / slack).toBeCloseTo(1, 1);
});

describe('key and marking grid', () => {
  const shown = async (more: string, name: string) => {
    const order = orderOf(more);
    const [html] = [...(await documentsOf(order, issuesOf(order)))].flatMap(([file, made]) => (file.includes(name) ? [made] : []));
    return html!.replace(/<style[^]*?<\/style>/, '');
  };

  test.each(['keys', 'marking-grid'])('say why where the order asks for it, and not a word else: %s', async (name) => {
    const asked = await shown('reasons: yes\n', name);
    expect(asked).toContain(said.lead);
    expect(asked).toMatch(/lowest: [^]*highest: /);
    expect(await shown('', name)).not.toMatch(/lowest: |highest: /);
  });
});
