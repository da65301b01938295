import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { findBrowser } from '../../generators/press/browser.ts';
import { type Issue, programOf } from '../../generators/sheets/issue.ts';
import { ledgerText, makeLedger, readLedger } from '../../generators/sheets/ledger.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { describeUnless, describeWith } from '../outside.ts';
import { textOf } from '../pdf/pdf.ts';
import { issuesOf, orderOf, SECRET } from '../sheets/class.ts';
import { filesIn } from './files.ts';
import { scratch, slidewire, WIRE } from './slidewire.ts';

const { at, write } = scratch();
const browser = await findBrowser().then(() => [], () => ['a browser']);
const MANGANIN = 'manganin, 0.38 mm, 90 cm';
write('class.csv', 'roll,name\n7,Perrin Oakhollow\n8,Sabra Lintwick\n');
const order = write('order.yaml', `class: class.csv\nwires: "${WIRE}"\nsections: practice\nseed: spring\n`);
const ledgerIn = (...folder: string[]) => readLedger(readFileSync(at(...folder, 'teacher', 'ledger.json'), 'utf8'));

const experiment = experimentNamed('resistivity');

/** Whether a right answer of one sheet would be taken on the other. */
function mixed(one: Issue, other: Issue): boolean {
  const [mine, theirs] = [one, other].map(({ sheet }) => workOut(sheet, programOf(experiment, sheet))) as [ReturnType<typeof workOut>, ReturnType<typeof workOut>];
  return experiment.layout.apart.some((id) =>
    mine.cells(id).some(({ exact, accept: [low, high] }, row) => {
      const { exact: their, accept } = theirs.cells(id)[row]!;
      return (exact >= accept[0] && exact <= accept[1]) || (their >= low && their <= high);
    }),
  );
}

describeUnless(browser, 'a further set', () => {
  let before: Record<string, string>;
  let after: Record<string, string>;
  let ledgerBefore: string;
  beforeAll(async () => {
    expect(await slidewire(['pack', order, '--out', at('pack')])).toMatchObject({ code: 0 });
    before = filesIn(at('pack'));
    ledgerBefore = ledgerText(ledgerIn('pack'));
    const { code, out, err } = await slidewire(['pack', '--again', '7', '--again', '8', '--out', at('pack')]);
    expect(code, err).toBe(0);
    const [seven, eight] = ledgerIn('pack').issues.slice(2);
    expect(out).toContain(`Roll 7, sitting 2: sheet ${seven!.code}\nRoll 8, sitting 2: sheet ${eight!.code}\n`);
    expect(await slidewire(['pack', '--again', '7', '--wire', MANGANIN, '--out', at('pack')])).toMatchObject({ code: 0 });
    after = filesIn(at('pack'));
  });

  test('is a worksheet, a key and a solution more, by roll and sitting', () => {
    const added = Object.keys(after).filter((path) => !(path in before));
    const names = ['3-roll-7-sitting-2', '4-roll-8-sitting-2', '5-roll-7-sitting-3'];
    const kinds = ['students/again/worksheet', 'teacher/again/key', 'teacher/again/solution'];
    expect(added).toEqual(kinds.flatMap((kind) => names.map((name) => `${kind}-${name}.pdf`)));
  });

  test('leaves every file as it was but the ledger and the answers file, which only grow, and the page for typing them', () => {
    const grown = ['teacher/ledger.json', 'teacher/answers.csv', 'teacher/typing.html'];
    expect(after).toMatchObject({ ...before, ...Object.fromEntries(grown.map((path) => [path, expect.any(String)])) });
    const ledger = readFileSync(at('pack', 'teacher', 'ledger.json'), 'utf8');
    expect(ledger.startsWith(ledgerBefore.slice(0, ledgerBefore.lastIndexOf('\n ]')))).toBe(true);
  });

  test('has a row in the answers file, and its sheet in the page for typing them', () => {
    const codes = ledgerIn('pack').issues.map(({ code }) => code);
    const rows = readFileSync(at('pack', 'teacher', 'answers.csv'), 'utf8').trim().split('\r\n').slice(1);
    expect(rows.map((row) => row.split(',')[2])).toEqual(codes);
    const page = readFileSync(at('pack', 'teacher', 'typing.html'), 'utf8');
    for (const code of codes) expect(page).toContain(`"${code}"`);
  });

  test('has the student of the first, the next sitting, and a code and readings of its own', () => {
    const { issues } = ledgerIn('pack');
    expect(issues.map(({ roll, name, sitting, wires }) => [roll, name, sitting, wires.join()])).toEqual([
      ['7', 'Perrin Oakhollow', 1, WIRE],
      ['8', 'Sabra Lintwick', 1, WIRE],
      ['7', 'Perrin Oakhollow', 2, WIRE],
      ['8', 'Sabra Lintwick', 2, WIRE],
      ['7', 'Perrin Oakhollow', 3, MANGANIN],
    ]);
    expect(new Set(issues.map(({ code }) => code)).size).toBe(5);
    expect(new Set(issues.map(({ sheet }) => JSON.stringify(sheet.readings))).size).toBe(5);
  });

  test('is kept apart from every set before it, the student’s own among them', () => {
    const { issues } = ledgerIn('pack');
    issues.forEach((issue, place) => {
      expect(issue.shared).toEqual([]);
      expect(issues.slice(0, place).filter((other) => mixed(issue, other))).toEqual([]);
    });
  });

  test('stays when the pack is made again, and is made with it from its ledger elsewhere', async () => {
    expect(await slidewire(['pack', order, '--out', at('pack')])).toMatchObject({ code: 0 });
    expect(filesIn(at('pack'))).toEqual(after);
    expect(await slidewire(['pack', order, '--ledger', at('pack', 'teacher', 'ledger.json'), '--out', at('elsewhere')])).toMatchObject({ code: 0 });
    expect(filesIn(at('elsewhere'))).toEqual(after);
  });

  test('of blank readings is a worksheet and its card', async () => {
    expect(await slidewire(['pack', order, '--readings', 'blank', '--out', at('blank')])).toMatchObject({ code: 0 });
    expect(await slidewire(['pack', '--again', '8', '--out', at('blank')])).toMatchObject({ code: 0 });
    const added = Object.keys(filesIn(at('blank'))).filter((path) => path.includes('/again/'));
    expect(added).toEqual(['students/again/worksheet-3-roll-8-sitting-2.pdf', 'teacher/again/cards-3-roll-8-sitting-2.pdf']);
  });

  describeWith(['pdftotext'], 'read back,', () => {
    test('stands under its own code on worksheet, key and solution, without the other student', () => {
      const { code } = ledgerIn('pack').issues[2]!;
      for (const [path, kind] of [['students', 'worksheet'], ['teacher', 'key'], ['teacher', 'solution']] as const) {
        const text = textOf(at('pack', path, 'again', `${kind}-3-roll-7-sitting-2.pdf`));
        expect(text).toContain(code);
        expect(text).toContain('Perrin Oakhollow');
        expect(text).not.toContain('Sabra Lintwick');
      }
    });
  });
});

describe('a further set is refused', () => {
  const plain = orderOf('sections: practice\n');
  const ledger = makeLedger({ kind: 'assessed', secret: SECRET, orderDigest: '', order: plain }, issuesOf(plain));
  write('there/teacher/ledger.json', ledgerText(ledger));
  write('part/teacher/ledger.json', ledgerText(makeLedger({ ...ledger, part: { number: 2, of: 3, students: 9 } }, ledger.issues)));
  write('odd/teacher/ledger.json', ledgerText(makeLedger({ ...ledger, order: { ...plain, rows: 99 } }, ledger.issues)));

  test.each([
    ['for a roll that is not in the pack, with a near miss', ['Q17-89', '--out', at('there')], '--again: there is no roll Q17-89 in this pack; did you mean Q17-88?'],
    ['for a roll given twice', ['Q17-88', '--again', 'Q17-88', '--out', at('there')], '--again: roll Q17-88 is given twice; give it once'],
    ['beside an order', ['Q17-88', order, '--out', at('there')], `--again takes the order from the ledger of the pack; leave out "${order}"`],
    ['without a pack', ['Q17-88'], 'say which pack the sheets are added to: --out DIR'],
    ['where there is no pack', ['Q17-88', '--out', at('nowhere')], `${at('nowhere')}: holds no pack (there is no teacher/ledger.json in it); give the folder of one with --out`],
    ['in a part of a pack, which cannot keep it apart from the others', ['Q17-88', '--out', at('part')], `${at('part')}: holds part 2 of 3 alone; join the ledgers of all parts`],
    ['on a wire that cannot be used', ['Q17-88', '--wire', 'copper, 1 mm, 50 cm', '--out', at('there')], '--wire: copper, 1 mm, 50 cm: its resistance is about 0.0110 Ω'],
    ['with flags of an order', ['Q17-88', '--rows', '5', '--out', at('there')], 'there is no flag --rows'],
    ['under an order that does not hold any more', ['Q17-88', '--out', at('odd')], `${at('odd', 'teacher', 'ledger.json')}, order.rows: "99" does not fit here; it takes a whole number from 3 to 6`],
  ])('%s', async (_, args, words) => {
    const before = filesIn(at('.'));
    const { code, err } = await slidewire(['pack', '--again', ...args]);
    expect(code).toBe(1);
    expect(err).toContain(words);
    expect(filesIn(at('.'))).toEqual(before);
  });
});

describe('a broken ledger', () => {
  const whole = ledgerText(makeLedger({ kind: 'assessed', secret: SECRET, orderDigest: '', order: orderOf() }, issuesOf(orderOf())));

  test.each([
    ['half of one', whole.slice(0, 3000), ': this is no ledger, or not a whole one'],
    ['one of another format', whole.replace('"format": 1', '"format": 2'), ', format: this is no ledger as Slidewire writes it'],
    ['one with another secret', whole.replace(SECRET, `${SECRET}0`), ', seal: does not fit'],
    ['one with another name', whole.replace('Sabra', 'Sabrina'), ', issues[1]: the entry of roll Q23-41 was changed'],
    ['nothing at all', '', ': this is no ledger, or not a whole one'],
  ])('(%s) is named, and no pack or ledger is made in its place', async (_, text, words) => {
    const file = write('broken/teacher/ledger.json', text);
    for (const args of [['pack', order, '--out', at('broken')], ['pack', '--again', 'Q17-88', '--out', at('broken')], ['pack', order, '--ledger', file, '--out', at('new')], ['issue', order, '--out', file]]) {
      const { code, err } = await slidewire(args);
      expect(code, args.join(' ')).toBe(1);
      expect(err).toContain(`${file}${words}`);
      expect(Object.keys(filesIn(at('broken')))).toEqual(['teacher/ledger.json']);
      expect(readFileSync(file, 'utf8')).toBe(text);
      expect(() => filesIn(at('new'))).toThrow('ENOENT');
    }
  });
});
