import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { type Issue, programOf } from '../../generators/sheets/issue.ts';
import { type Ledger, readLedger } from '../../generators/sheets/ledger.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { scratch, slidewire } from '../cli/slidewire.ts';
import { describeWith } from '../outside.ts';
import { leaks } from '../sheets/leaks.ts';
import { check, fontsOf, infoOf, insidesOf, sizeIn, structureOf, textOf } from './pdf.ts';

const { at, write } = scratch();
const STUDENTS = [['Q17-88', 'Perrin Oakhollow'], ['Q23-41', 'Sabra Lintwick'], ['Q35-09', 'Yorick Embleton']];
write('class.csv', `roll,name\n${STUDENTS.map((row) => `${row.join()}\n`).join('')}`);
const order = write('order.yaml', 'class: class.csv\nwires: ["constantan, SWG 28, 60 cm", "manganin, SWG 30, 55 cm", "nichrome, SWG 26, 45 cm"]\n');

const experiment = experimentNamed('resistivity');
const work = ({ sheet }: Issue) => workOut(sheet, programOf(experiment, sheet));
const readings = ({ sheet }: Issue, id: string) => [sheet.readings[id]!].flat();
const number = (text: string) => text.replaceAll('.', '\\.');

describeWith(['pdftotext', 'pdfinfo', 'pdffonts', 'qpdf'], 'the PDFs of an assessed pack, read back,', () => {
  describe.each([
    // ISO 216: 210 mm × 297 mm; ANSI/ASME Y14.1: 8.5 in × 11 in. A point is 1/72 in.
    ['A4', 'left', [(210 / 25.4) * 72, (297 / 25.4) * 72]],
    ['Letter', 'right', [8.5 * 72, 11 * 72]],
  ])('on %s, the box in the %s gap', (paper, gap, size) => {
    const folder = at(paper);
    const single = (whose: 'students' | 'teacher', place: number) => {
      const files = readdirSync(join(folder, whose, 'single')).sort();
      return join(folder, whose, 'single', files[place]!);
    };
    const pdfs = (below: string) =>
      readdirSync(join(folder, below), { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.pdf')).map((name) => join(folder, below, name));
    let ledger: Ledger;

    beforeAll(async () => {
      const { code, err } = await slidewire(['pack', order, '--paper', paper, '--gap', gap, '--out', folder]);
      expect(code, err).toBe(0);
      ledger = readLedger(readFileSync(join(folder, 'teacher', 'ledger.json'), 'utf8'))!;
    });

    test('every worksheet has its student, code and every reading in its place', () => {
      ledger.issues.forEach((issue, place) => {
        const text = textOf(single('students', place));
        for (const word of [issue.name, issue.roll, issue.code]) expect(text).toContain(word);
        const [R, l, msr, n] = ['R', 'l', 'msr', 'n'].map((id) => readings(issue, id)) as [string[], string[], string[], string[]];
        R.forEach((ohms, row) => expect(text).toMatch(new RegExp(`^ *${row + 1} +${number(ohms)} +${number(l[row]!)} *$`, 'm')));
        msr.forEach((mm, row) => {
          const label = `${Math.floor(row / 2) + 1}${'ab'[row % 2]}`;
          expect(text).toMatch(new RegExp(`^ *${label} +${number(mm)} +${n[row]} *$`, 'm'));
        });
        expect(text).toMatch(new RegExp(`L = ${number(readings(issue, 'L')[0]!)} cm`));
        expect(text).toContain('generated for practice');
      });
    });

    test('every key has its student, the readings and every answer in its row', () => {
      ledger.issues.forEach((issue, place) => {
        const text = textOf(single('teacher', place));
        for (const word of [issue.name, issue.roll, issue.code]) expect(text).toContain(word);
        const cells = work(issue);
        const [R, l] = ['R', 'l'].map((id) => readings(issue, id)) as [string[], string[]];
        cells.cells('X').forEach(({ shown }, row) => {
          const rest = number(cells.cells('r')[row]!.shown);
          expect(text).toMatch(new RegExp(`^ *${row + 1} +${number(R[row]!)} +${number(l[row]!)} +${rest} +${number(shown)} *$`, 'm'));
        });
        const [meanX, d, rho] = ['meanX', 'd', 'rho'].map((id) => cells.cells(id)[0]!.shown) as [string, string, string];
        expect(text).toMatch(new RegExp(`resistance of the wire is ${number(meanX)} Ω`));
        expect(text).toMatch(new RegExp(`${number(d)} mm`));
        const [mantissa, exponent] = rho.split('e') as [string, string];
        expect(text.replace(/\s+/g, ' ')).toMatch(new RegExp(`resistivity of its material is ${number(mantissa)} × 10-${exponent.slice(1)} Ω m`));
      });
    });

    test('the grid has every student with the deciding answers', () => {
      const grid = textOf(join(folder, 'teacher', 'marking-grid.pdf'));
      for (const issue of ledger.issues) {
        for (const word of [issue.name, issue.roll, issue.code, work(issue).cells('meanX')[0]!.shown]) expect(grid).toContain(word);
      }
    });

    test('the parts that hold all sheets have all students, in the order of the class', () => {
      for (const part of ['students/worksheets-1.pdf', 'teacher/keys-1.pdf', 'teacher/solutions-1.pdf']) {
        const text = textOf(join(folder, part));
        const places = ledger.issues.map(({ name }) => text.indexOf(name));
        expect(places.every((place) => place >= 0), part).toBe(true);
        expect([...places].sort((a, b) => a - b)).toEqual(places);
      }
    });

    test('every PDF is sound, tagged, of the right paper, in its language, and carries its fonts', () => {
      const all = [...pdfs('students'), ...pdfs('teacher')];
      expect(all).toHaveLength(3 + 1 + 3 + 1 + 1 + 1);
      for (const file of all) {
        expect(check(file), file).toContain('No syntax or stream encoding errors');
        const info = infoOf(file);
        expect(info).toMatch(/^Tagged: +yes$/m);
        expect(info).toMatch(/^Title: +\S/m);
        expect(insidesOf(file)).toContain('"/Lang": "u:en"');
        const turned = file.endsWith('marking-grid.pdf') ? [...size].reverse() : size;
        sizeIn(info).forEach((points, side) => expect(Math.abs(points - turned[side]!), file).toBeLessThan(1));
        const fonts = fontsOf(file);
        expect(fonts.length).toBeGreaterThan(0);
        expect(fonts.filter(({ embedded }) => !embedded)).toEqual([]);
      }
    });

    test('the pages of students hold no secret, truth or answer to four figures: in text, tags, metadata or name', () => {
      for (const file of pdfs('students')) {
        const readable = [file.slice(folder.length), textOf(file), structureOf(file), infoOf(file)].join('\n');
        for (const hidden of [readable, insidesOf(file)]) expect(hidden).not.toContain(ledger.secret);
        for (const issue of ledger.issues) {
          expect(leaks(readable, issue.truth), file).toEqual([]);
          const worked = work(issue);
          const ids = programOf(experiment, issue.sheet).steps.filter(({ kind }) => kind === 'relation' || kind === 'summary').map(({ id }) => id);
          const answers = ids.flatMap((id) => worked.cells(id).map(({ exact }, row) => [`${id} ${row}`, exact] as const));
          expect(leaks(readable, Object.fromEntries(answers)), file).toEqual([]);
        }
      }
    });

    test('what goes to one student holds no other name, roll or code, not even out of sight', () => {
      ledger.issues.forEach(({ name, roll, code }, own) => {
        ledger.issues.forEach((_, place) => {
          const file = single('students', place);
          const all = [file.slice(folder.length), textOf(file), structureOf(file), insidesOf(file)].join('\n');
          for (const word of [name, roll, code]) expect(all.includes(word), `${word} in ${file}`).toBe(place === own);
        });
      });
    });
  });
});
