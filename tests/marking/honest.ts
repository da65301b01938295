import { scale, tensInto } from '../../generators/quantities/evaluate.ts';
import { type Formula, formula } from '../../generators/quantities/formula.ts';
import type { Program } from '../../generators/quantities/program.ts';
import type { Digits, Relation, Slip, Summary, Written } from '../../generators/quantities/step.ts';
import { mean, summaryMethods } from '../../generators/quantities/summary.ts';
import { unit } from '../../generators/quantities/unit.ts';
import { round } from '../../generators/quantities/written.ts';
import type { Random } from '../../generators/random.ts';
import type { Sheet } from '../../generators/sheets/sheet.ts';

/** What a student makes of a sheet: every value as written down, one a row. */
export type StudentRecord = Record<string, Written[]>;

/** A slip made at one step. */
export interface Injected {
  at: string;
  slip: Slip;
}

const PIS = ['3.14', '(22 / 7)', '3.142', '3.1416', 'pi'];
const more = (digits: Digits, extra: number): Digits => ('decimals' in digits ? { decimals: digits.decimals + extra } : { figures: digits.figures + extra });

/**
 * A student who rounds honestly in any permitted way (the stated digits or more, ties either way), goes on with what was
 * written or with what the calculator still shows, takes π anyhow and any listed route; and who makes the slips given, if
 * any. The formulas are those of the steps, but no interval and no accept range is used here.
 */
export function workSheet(program: Program, sheet: Sheet, random: Random, slips: readonly Injected[] = []): StudentRecord {
  const carried = new Map<string, number[]>();
  const record: StudentRecord = {};
  const pi = random.pick(PIS);
  for (const step of program.steps) {
    if (step.kind === 'verdict') continue;
    if (step.kind === 'influence') carried.set(step.id, [0]);
    else if (step.kind === 'reading' || step.kind === 'given') carried.set(step.id, [sheet.readings[step.id]!].flat().map(Number));
    else {
      const slip = slips.find(({ at }) => at === step.id)?.slip;
      const values = step.kind === 'summary' ? [summary(step, carried, slip, program)] : relation(program, step, carried, random, pi, slip);
      const written = values.map((value) => round(value, more(step.digits, random.pick([0, 0, 0, 1, 2, 4])), random.pick(['even', 'up'])));
      record[step.id] = written;
      carried.set(step.id, values.map((value, row) => (random.uniform() < 0.5 ? value : Number(written[row]))));
    }
  }
  return record;
}

const rowOf = (column: readonly number[], row: number) => (column.length === 1 ? column[0]! : column[row]!);

function summary(step: Summary, carried: Map<string, number[]>, slip: Slip | undefined, program: Program): number {
  if (slip) {
    const names = new Set([...carried.keys()]);
    const made = compiled(slip.as, names);
    return made.value(made.names.map((id) => (program.step(id).per ? mean(carried.get(id)!) : carried.get(id)![0]!)));
  }
  return summaryMethods[step.by].value(step.of.map((id) => carried.get(id)!));
}

function relation(program: Program, step: Relation, carried: Map<string, number[]>, random: Random, pi: string, slip: Slip | undefined): number[] {
  const known = new Set(carried.keys());
  const route = slip ? undefined : random.pick([undefined, ...(step.routes ?? [])]);
  const withPi = (as: string, names: ReadonlySet<string>) => compiled(as.replace(/\bpi\b/g, pi), names);
  const rows = step.per ? Math.max(...[...carried].filter(([id]) => program.step(id).per === step.per).map(([, column]) => column.length)) : 1;
  return Array.from({ length: rows }, (_, row) => {
    const lines = new Map<string, number>();
    const value = (id: string) => lines.get(id) ?? scale(rowOf(carried.get(id)!, row), tensInto(program, step, id));
    const names = new Set(known);
    for (const line of route?.via ?? []) {
      const made = withPi(line.as, names);
      lines.set(line.id, Number(round(made.value(made.names.map(value)), more(line.digits, random.pick([0, 1, 3])), 'even')));
      names.add(line.id);
    }
    const made = withPi(slip?.as ?? route?.as ?? step.as, names);
    const out = made.value(made.names.map(value));
    return step.si ? scale(out, -unit(step.unit).tens) : out;
  });
}

const formulas = new Map<string, Formula>();

/** A formula is parsed once; a million students share it. */
function compiled(as: string, names: ReadonlySet<string>): Formula {
  const kept = formulas.get(as) ?? formula(as, names);
  formulas.set(as, kept);
  return kept;
}
