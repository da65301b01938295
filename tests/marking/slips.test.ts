import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { coincidences } from '../../generators/marking/coincidences.ts';
import { judge } from '../../generators/marking/judge.ts';
import { slipsOf } from '../../generators/marking/slipped.ts';
import { slipWords } from '../../generators/marking/words.ts';
import { loadMarkingWords } from '../../generators/cli/marking-content.ts';
import { PLAIN_SLIPS } from '../../generators/marking/slip.ts';
import { streams } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { classOf, typed } from './classes.ts';
import { workSheet } from './honest.ts';

/** SLIDEWIRE_SHEETS=10000 is the measurement that DEVELOPERS.md gives; sheets are issued in classes of 100. */
const SHEETS = Number(process.env['SLIDEWIRE_SHEETS'] ?? 40);
const CLASS = Math.min(100, SHEETS);

interface Count {
  made: number;
  /** The first answer that could show it is accepted: by chance the value is a right one. */
  accepted: number;
  named: number;
  alone: number;
}

describe.each(['resistivity', 'interchange'])('%s: each slip of the catalogue, made by a student who rounds honestly', (id) => {
  const experiment = experimentNamed(id);
  const random = streams('slips').of(id);
  const counts = new Map<string, Count>();
  const unsaid: string[] = [];
  const alarms: string[] = [];

  test('is worked on every sheet', () => {
    for (let from = 0; from < SHEETS; from += CLASS) {
      const { issues, columns } = classOf(CLASS, `experiment: ${id}\n`, `slips ${from}`);
      for (const { sheet } of issues) {
        const program = programOf(experiment, sheet);
        const told = new Set(coincidences(sheet, program, columns).map(({ at, slip }) => `${at}: ${slip}`));
        for (const step of program.steps) {
          for (const slip of slipsOf(step)) {
            const name = `${step.id}: ${slip.id}`;
            const judged = judge(sheet, program, columns, typed(columns, workSheet(program, sheet, random, [{ at: step.id, slip }])));
            const wrong = judged.filter(({ verdict }) => verdict === 'wrong');
            const explanations = wrong.flatMap((one) => one.explanations);
            const named = explanations.some((one) => (one.at === step.id && one.slip === slip.id) || (one.with?.at === step.id && one.with.slip === slip.id));
            const count = counts.get(name) ?? { made: 0, accepted: 0, named: 0, alone: 0 };
            counts.set(name, { made: count.made + 1, accepted: count.accepted + (wrong.length === 0 ? 1 : 0), named: count.named + (named ? 1 : 0), alone: count.alone + (named && wrong[0]!.explanations.length === 1 ? 1 : 0) });
            if (wrong.length === 0 && !told.has(name)) unsaid.push(`${name}: ${judged.map(({ column, value, accept }) => `${column.id} ${value} (${accept.join(' to ')})`).join(', ')}`);
          }
        }
        const right = judge(sheet, program, columns, typed(columns, workSheet(program, sheet, random)));
        alarms.push(...right.filter(({ verdict, explanations }) => verdict === 'wrong' || explanations.length > 0).map(({ column, value }) => `${column.id} = ${value}`));
      }
    }
    if (process.env['SLIDEWIRE_SHEETS']) for (const [name, count] of counts) process.stdout.write(`${id}, ${name}: ${JSON.stringify(count)}\n`);
    expect([...counts.values()].every(({ made }) => made > 0)).toBe(true);
  }, 36_000_000);

  test('is named in at least 98 % of the sheets on which it can be told from a right answer', () => {
    const all = [...counts.values()];
    const tellable = all.reduce((sum, { made, accepted }) => sum + made - accepted, 0);
    const named = all.reduce((sum, count) => sum + count.named, 0);
    if (process.env['SLIDEWIRE_SHEETS']) process.stdout.write(`${id}: ${named} of ${tellable} named, ${all.reduce((sum, { alone }) => sum + alone, 0)} of them as the only one that fits; ${all.reduce((sum, { accepted }) => sum + accepted, 0)} coincide\n`);
    expect(tellable).toBeGreaterThan(SHEETS * 5);
    expect(named / tellable).toBeGreaterThanOrEqual(0.98);
  });

  test('is accepted nowhere but where the sheet is known for it', () => expect(unsaid).toEqual([]));

  test('is seen in no right answer', () => expect(alarms).toEqual([]));
});

test('every slip that an experiment lists, and every plain one, has words for what it is and what to do', () => {
  const words = loadMarkingWords('en');
  const sources = readdirSync('generators/experiments').map((file) => readFileSync(`generators/experiments/${file}`, 'utf8'));
  const listed = sources.flatMap((source) => [...source.matchAll(/slips: \[([^\]]*)\]/g)].flatMap(([, list]) => [...list!.matchAll(/\{ id: '([^']+)', as:/g)].map(([, id]) => id!)));
  expect(listed.length).toBeGreaterThan(14);
  expect([...new Set([...listed, ...PLAIN_SLIPS])].filter((id) => slipWords(words, id).do === '')).toEqual([]);
});
