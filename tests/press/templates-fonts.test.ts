import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { unprintableNames } from '../../generators/cli/pack-files.ts';
import { facesFor, unprintable } from '../../generators/press/fonts.ts';
import { openPress } from '../../generators/press/print.ts';
import { characters } from '../../generators/press/woff2.ts';
import { documentsOf, issuesOf, orderOf } from '../sheets/class.ts';
import { describeWith } from '../outside.ts';
import { describeWithEachBrowser, run } from './outside.ts';

/** Invented names; what pdffonts calls the face that prints them, [none] where it is drawn from a variable font. */
const NAMES: [script: string, name: string, face: string][] = [
  ['Latin with marks', 'Łucja Đỗ Çağrı', 'STIXTwoText'],
  ['Greek', 'Δάφνη Κορβέλη', 'STIXTwoText'],
  ['Cyrillic', 'Тимур Олейвин', 'STIXTwoText'],
  ['Devanagari', 'अनिका वेदराज क्ष्मा', 'NotoSerifDevanagari'],
  ['Bengali', 'সুমনা চৌধুরী', 'NotoSerifBengali'],
  ['Gujarati', 'નીલા વેદરાજ', 'NotoSerifGujarati'],
  ['Gurmukhi', 'ਨੀਲਮ ਵੇਦ', 'NotoSansGurmukhi'],
  ['Odia', 'ନୀଳା ବେଦ', 'NotoSansOriya'],
  ['Tamil', 'தமிழ்ச்செல்வி வேதன்', 'NotoSerifTamil'],
  ['Telugu', 'లక్ష్మీ వేదరాజు', 'NotoSerifTelugu'],
  ['Kannada', 'ನೀಲಾ ವೇದರಾಜ', 'NotoSansKannada'],
  ['Malayalam', 'നീല വേദരാജ്', 'NotoSerifMalayalam'],
  ['Arabic', 'ليلى الوراقة', 'NotoNaskhArabic'],
  ['Hebrew', 'נועה ברקין', 'NotoSerifHebrew'],
  ['Chinese', '柳云帆', '[none]'],
  ['Japanese', '灰谷 さくら', '[none]'],
  ['Korean', '한들바람', '[none]'],
];
const STANDING = ['STIXTwoText', 'STIXTwoMath'];

const order = orderOf('sections: practice\n');
const roll = (i: number) => String(i + 1);
const issues = issuesOf(order, NAMES.map(([, name], i) => ({ roll: roll(i), name })));

describe('faces', () => {
  test('a plain sheet carries none but the standing ones', () => expect(facesFor('Null point at 43.2 cm, −0.03 ± ∞')).toEqual([]));

  test.each(NAMES)('%s is printed by its own typeface, a slice or a few of it', (_, name, face) => {
    const files = facesFor(name).map(({ file }) => file.replaceAll('-', '').toLowerCase());
    expect(files.length).toBeGreaterThan(0);
    expect(files.length).toBeLessThanOrEqual(4);
    if (face !== '[none]') for (const file of files) expect(file).toContain(face.toLowerCase());
    expect(unprintable(name)).toEqual([]);
  });

  test('what no font has is named once each, and what nobody sees is not missed', () => {
    expect(unprintable('a\u{1F600}b\u{1F600} \u2764\uFE0F \u200D')).toEqual(['\u{1F600}', '\u2764']);
  });

  test('the teacher is told whose name, and which characters of it', () => {
    const told = unprintableNames([{ roll: '7', name: 'Bevan Oxmarsh' }, { roll: '12', name: 'Mo \u{1F600}' }]);
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(/^roll 12: .*\u{1F600} \(U\+1F600\)/u);
  });

  test('a font is read down to its table of characters', () => {
    const file = createRequire(import.meta.url).resolve('@fontsource/noto-serif-hebrew/files/noto-serif-hebrew-hebrew-400-normal.woff2');
    const found = characters(readFileSync(file));
    // The 27 letters of the Hebrew block, final forms among them (Unicode, U+05D0 to U+05EA); no Greek.
    for (let code = 0x5d0; code <= 0x5ea; code++) expect(found).toContain(code);
    expect(found).not.toContain(0x3b1);
  });
});

await describeWithEachBrowser('names', (found) => {
  describeWith(['pdffonts', 'pdftotext', 'qpdf'], 'in print', () => {
    const folder = mkdtempSync(join(tmpdir(), 'names-test-'));
    afterAll(() => rmSync(folder, { recursive: true }));
    const pdf = (i: number) => join(folder, `${i}.pdf`);
    beforeAll(async () => {
      const documents = [...(await documentsOf(order, issues, 'worksheet'))].filter(([file]) => file.includes('single'));
      const press = await openPress({ found });
      for (const [i, [, html]] of documents.entries()) await press.print(html, pdf(i));
      await press.close();
    });

    test.each(NAMES.map(([script, name, face], i) => ({ script, name, face, i })))('$script: bundled fonts alone, all embedded', ({ face, i }) => {
      const fonts = run('pdffonts', pdf(i)).trim().split('\n').slice(2);
      const names = fonts.map((line) => line.split(/\s+/)[0]!.replace(/^[A-Z]{6}\+/, ''));
      expect(names.some((name) => name.startsWith(face))).toBe(true);
      for (const name of names) expect([...STANDING, face].some((one) => name.startsWith(one)), name).toBe(true);
      for (const line of fonts) expect(line).toMatch(/ yes (?:yes|no) +(?:yes|no) +\d+ +0$/);
    });

    test.each(NAMES.map(([script], i) => ({ script, i })))('$script: no character falls to the glyph of the missing', ({ i }) => {
      const plain = run('qpdf', '--qdf', '--object-streams=disable', pdf(i), '-');
      const shown = [...plain.matchAll(/<([0-9a-f]+)> Tj/gi)].flatMap(([, hex]) => hex!.match(/.{4}/g) ?? []);
      expect(shown.length).toBeGreaterThan(300);
      expect(shown).not.toContain('0000');
    });

    test.each(NAMES.filter(([, , face]) => face.startsWith('STIX') || face === '[none]' || face.endsWith('Hebrew')).map(([script, name]) => ({ script, name, i: NAMES.findIndex((one) => one[1] === name) })))(
      '$script: the name can be searched for',
      ({ name, i }) => {
        const text = run('pdftotext', pdf(i), '-').normalize('NFKC').replace(/[\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, '');
        for (const word of name.normalize('NFKC').split(' ')) expect(text).toContain(word);
      },
    );
  });
});
