import { describe, expect, test, vi } from 'vitest';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { type Issue, programOf } from '../../generators/sheets/issue.ts';
import type { Worked } from '../../generators/sheets/worked.ts';
import { documentsOf, issuesOf, orderOf, SECRET, STUDENTS, wordsOf } from './class.ts';
import { leaks } from './leaks.ts';

/** What working out does while a document is made: as usual, an error, or other answers. */
const work = vi.hoisted(() => ({ out: 'as usual' as 'as usual' | 'never' | 'wrongly' }));

vi.mock('../../generators/sheets/worked.ts', async (original) => {
  const { workOut } = await original<typeof import('../../generators/sheets/worked.ts')>();
  const working: typeof workOut = (sheet, program, own) => {
    if (work.out === 'never') throw new Error('worked out');
    const readings = { ...sheet.readings, L: '77.7' };
    return workOut(work.out === 'wrongly' ? { ...sheet, readings } : sheet, program, own);
  };
  return { workOut: working };
});

async function whileWorking<T>(out: typeof work.out, make: () => Promise<T>): Promise<T> {
  work.out = out;
  return make().finally(() => (work.out = 'as usual'));
}

/** The same sheets with other truths, shared answers and attempts behind them. */
function withOtherTruths(issues: Issue[]): Issue[] {
  return issues.map((issue) => ({
    ...issue,
    attempt: issue.attempt + 7,
    shared: [{ roll: 'elsewhere', id: 'rho', row: 0 }],
    truth: Object.fromEntries(Object.entries(issue.truth).map(([name, value]) => [name, 1.7 * value + 3])),
  }));
}

function exactAnswers({ sheet }: Issue, workOut: (sheet: Issue['sheet'], program: Worked['program']) => Worked): Record<string, number> {
  const program = programOf(experimentNamed(sheet.experiment), sheet);
  const worked = workOut(sheet, program);
  const computed = program.steps.filter(({ kind }) => kind === 'relation' || kind === 'summary');
  return Object.fromEntries(computed.flatMap(({ id }) => worked.cells(id).map(({ exact }, row) => [`${id} ${row}`, exact])));
}

const orders = ['sections: record\n', 'sections: practice\n', 'drawn: scale plugs gauge rule\n', 'readings: blank\n', 'gap: right\nsize: 18pt\n'];

describe.each(orders)('worksheets of an order with %j', (more) => {
  const order = orderOf(more);
  const issues = issuesOf(order);

  test('are the same, byte for byte, with every truth replaced and nothing worked out', async () => {
    const usual = await documentsOf(order, issues, 'worksheet');
    expect(usual.size).toBe(STUDENTS.length + 1);
    const blind = await whileWorking('never', () => documentsOf(order, withOtherTruths(issues), 'worksheet'));
    expect([...blind.entries()]).toEqual([...usual.entries()]);
  });

  test('hold no secret, and no truth or answer to four figures, in text, names or text alternatives', async () => {
    const { workOut } = await import('../../generators/sheets/worked.ts');
    const usual = await documentsOf(order, issues, 'worksheet');
    for (const [file, html] of usual) {
      const words = `${file} ${wordsOf(html)}`;
      expect(words).not.toContain(SECRET);
      for (const issue of issues) {
        expect(leaks(words, issue.truth)).toEqual([]);
        expect(leaks(words, exactAnswers(issue, workOut))).toEqual([]);
      }
    }
  });

  test('that go to one student hold no other name, roll or code', async () => {
    const usual = await documentsOf(order, issues, 'worksheet');
    const single = [...usual].filter(([file]) => file.includes('/single/'));
    expect(single).toHaveLength(STUDENTS.length);
    single.forEach(([file, html], own) => {
      const words = `${file} ${wordsOf(html)}`;
      issues.forEach(({ name, roll, code }, other) => {
        for (const word of [name, roll, code]) expect(words.includes(word), `${word} in ${file}`).toBe(own === other);
      });
    });
  });
});

describe('the proof itself', () => {
  const order = orderOf();
  const issues = issuesOf(order);
  const keys = (documents: Map<string, string>) => [...documents].filter(([file]) => file.includes('key'));

  test('sees truths: other truths make other keys', async () => {
    const usual = keys(await documentsOf(order, issues));
    const others = keys(await documentsOf(order, withOtherTruths(issues)));
    usual.forEach(([file, html], i) => expect(others[i]![1] === html, file).toBe(false));
  });

  test('sees answers: other working makes other keys, and none makes no key', async () => {
    const usual = keys(await documentsOf(order, issues));
    const others = keys(await whileWorking('wrongly', () => documentsOf(order, issues)));
    usual.forEach(([file, html], i) => expect(others[i]![1] === html, file).toBe(false));
    await expect(whileWorking('never', () => documentsOf(order, issues))).rejects.toThrow('worked out');
  });

  test('finds truths and answers to four figures where they are printed', async () => {
    const { truth } = issues[0]!;
    const key = keys(await documentsOf(order, issues))[0]![1];
    expect(wordsOf(key)).toContain(STUDENTS[0]!.name);
    for (const [name, value] of Object.entries(truth)) {
      const text = `it is ${value} or ${value.toPrecision(4)} or ${value.toExponential(3)}`;
      expect(leaks(text, { [name]: value }), name).not.toEqual([]);
    }
  });
});

test('where instruments are drawn to be read, their readings stand nowhere in words', async () => {
  const order = orderOf('drawn: scale plugs gauge rule\n');
  const issues = issuesOf(order);
  const documents = await documentsOf(order, issues, 'worksheet');
  const plain = await documentsOf(orderOf(), issuesOf(orderOf()), 'worksheet');
  issues.forEach(({ sheet }, place) => {
    const own = (from: Map<string, string>) => wordsOf([...from].filter(([file]) => file.includes('/single/'))[place]![1]);
    for (const reading of [sheet.readings['l']!, sheet.readings['L']!].flat()) {
      const alone = new RegExp(`(?<![\\d.])${reading.replace('.', '\\.')}(?!\\d)`);
      expect(own(documents), reading).not.toMatch(alone);
      expect(own(plain), reading).toMatch(alone);
    }
  });
});
