import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { readClassList } from '../../generators/order/class-list.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import { keyedHash } from '../../generators/random.ts';
import { type Issue, programOf } from '../../generators/sheets/issue.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { issuesOf, known, orderOf, SECRET } from './class.ts';

const demo = (name: string) => readFileSync(new URL(`../../content/demo/${name}`, import.meta.url));
const order = readOrder(demo('order.yaml').toString(), 'order.yaml', known);
const { students } = readClassList(demo('class.csv'), 'class.csv', known);
const whole = issuesOf(order, students);
const byRoll = new Map(whole.map((issue) => [issue.roll, issue]));

/** A sheet without what the others of its class decide. */
const own = ({ shared: _, ...issue }: Issue) => issue;

const experiment = experimentNamed(order.experiment);
const work = ({ sheet }: Issue) => workOut(sheet, programOf(experiment, sheet));

/** Answers that two sheets would take from each other, by their accept ranges. */
function sharedAnswers(one: Issue, other: Issue): { id: string; row: number }[] {
  return experiment.layout.apart.flatMap((id) =>
    work(one).cells(id).flatMap(({ exact, accept }, row) => {
      const theirs = work(other).cells(id)[row]!;
      const taken = exact >= theirs.accept[0] && exact <= theirs.accept[1];
      const takes = theirs.exact >= accept[0] && theirs.exact <= accept[1];
      return taken || takes ? [{ id, row }] : [];
    }),
  );
}

describe('a sheet depends on order, secret and roll alone', () => {
  /** Whether a sheet is the one that its student gets alone; where not, an earlier sheet of the class is the reason. */
  function staysInClass(issue: Issue, earlier: Issue[]): boolean {
    const alone = issuesOf(order, students.filter(({ roll }) => roll === issue.roll))[0]!;
    if (issue.attempt === alone.attempt) {
      expect(own(issue)).toEqual(own(alone));
      return true;
    }
    expect(issue.attempt).toBeGreaterThan(alone.attempt);
    expect(earlier.flatMap((other) => sharedAnswers(alone, other))).not.toEqual([]);
    return false;
  }

  test('not on the size of the class, unless an earlier sheet came too near', () => {
    const stayed = whole.map((issue, place) => staysInClass(issue, whole.slice(0, place)));
    expect(new Set(stayed)).toEqual(new Set([true, false]));
    expect(issuesOf(order, students.slice(0, 12))).toEqual(whole.slice(0, 12));
  });

  test('not on the order of the class, unless an earlier sheet came too near', () => {
    const reversed = issuesOf(order, [...students].reverse());
    expect(reversed.filter((issue, place) => staysInClass(issue, reversed.slice(0, place))).length).toBeGreaterThan(1);
  });

  test('not on the names', () => {
    const renamed = issuesOf(order, students.map((student) => ({ ...student, name: 'Somebody Else' })));
    expect(renamed.map(({ sheet, code }) => [sheet, code])).toEqual(whole.map(({ sheet, code }) => [sheet, code]));
  });

  test('and is another under another secret, roll or attempt', () => {
    const readings = (issues: Issue[]) => issues.map(({ sheet }) => JSON.stringify(sheet.readings));
    const others = issuesOf(order, students, `${SECRET}0`);
    expect(new Set([...readings(whole), ...readings(others)]).size).toBe(2 * students.length);
  });

  test('and keeps to the wire that the class list gives it, written as an order writes it', () => {
    expect(byRoll.get('16')!.wires).toEqual(['constantan, 0.38 mm, 80 cm']);
    expect(byRoll.get('27')!.wires).toEqual(['nichrome, SWG 28, 50 cm']);
  });
});

describe('sheets of a class', () => {
  test('share no right answer but those that are recorded', () => {
    for (const [place, issue] of whole.entries()) {
      const found = whole.slice(0, place).flatMap((other) => sharedAnswers(issue, other).map((shared) => ({ roll: other.roll, ...shared })));
      expect(issue.shared).toEqual(found);
    }
  });

  test('have a code each', () => {
    expect(new Set(whole.map(({ code }) => code)).size).toBe(whole.length);
  });

  test('that cannot be kept apart are issued all the same, with what they share', () => {
    const crowd = Array.from({ length: 40 }, (_, i) => ({ roll: `${i}`, name: '' }));
    const one = readOrder('wires: "constantan, SWG 28, 60 cm"\n', 'order.yaml', known);
    const issues = issuesOf(one, crowd);
    expect(issues).toHaveLength(40);
    const shared = issues.flatMap((issue) => issue.shared.map(({ roll, id, row }) => [issue.roll, roll, id, row]));
    expect(shared.length).toBeGreaterThan(0);
    // Both sheets name each other, and neither itself.
    for (const [one, other, ...answer] of shared) {
      expect(one).not.toBe(other);
      expect(shared).toContainEqual([other, one, ...answer]);
    }
  });

  test('survive JSON', () => {
    expect(JSON.parse(JSON.stringify(whole))).toStrictEqual(whole);
  });

  test('say which experiment, edition and kind of readings they hold', () => {
    for (const { sheet } of whole) {
      expect(sheet).toMatchObject({ format: 1, experiment: 'resistivity', edition: experiment.edition, origin: 'generated' });
    }
  });
});

/** A hash for each edition; when numbers change, the edition goes up and a line is added. */
const GOLDEN: Record<number, string> = {
  1: '5525fb8f636465ade85224e2e505cc5a75c3df2f4c6530fa6720b28c5fa00485',
};

test('the readings of the demo are those of the edition', () => {
  const { edition } = experimentNamed(order.experiment);
  const readings = issuesOf(order, students, order.seed).map(({ roll, attempt, wires, sheet }) => [roll, attempt, wires.join(), sheet.form, sheet.readings]);
  expect(keyedHash('demo', [JSON.stringify(readings)])).toBe(GOLDEN[edition]);
});

test('readings blank or printed, paper and sections change no number', () => {
  const [printed, blank] = ['', 'readings: blank\npaper: Letter\nsections: practice\nsize: 24pt\n'].map((more) => issuesOf(orderOf(more)));
  expect(blank!.map(({ sheet }) => sheet.readings)).toEqual(printed!.map(({ sheet }) => sheet.readings));
});
