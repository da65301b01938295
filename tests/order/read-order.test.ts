import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { UserMistake } from '../../generators/mistake.ts';
import { checkOrder } from '../../generators/order/check.ts';
import { orderFlags } from '../../generators/order/flags.ts';
import { orderFromFlags, readOrder } from '../../generators/order/read-order.ts';
import { SECTIONS } from '../../generators/order/sections.ts';
import { readYaml } from '../../generators/order/yaml-text.ts';
import { known } from './known.ts';
import { linesOf } from './lines.ts';

const WIRE = 'wires: constantan, SWG 28, 60 cm\n';
const read = (yaml: string) => readOrder(WIRE + yaml, 'order.yaml', known);

describe('an order', () => {
  test('needs wires alone; the rest has defaults', () => {
    expect(read('')).toEqual({
      title: '', experiment: 'resistivity',
      wires: [{ material: 'constantan', gauge: { system: 'SWG', number: 28 }, lengthCm: 60 }],
      box: [0.1, 0.2, 0.2, 0.5, 1, 2, 2, 5, 10, 20],
      gap: 'left', rows: 4, window: [40, 60], hands: 'usual', sections: [...SECTIONS], readings: 'printed',
      drawn: [], latitude: { l: 0.1, n: 1, L: 0.1 },
      paper: 'A4', size: 'normal', symbols: 'IEC', rounding: 'even', tables: false, decimal: 'point', reasons: false, limits: { l: 0.1, R: 0 },
      resistivity: 'openstax-college', 'double-sided': false, singles: true, language: 'en',
    });
  });

  test.each<[string, string, Record<string, unknown>]>([
    ['a title in any letters', 'title: "Ohm’s law: कक्षा 12 <b>"', { title: 'Ohm’s law: कक्षा 12 <b>' }],
    ['a title that is a number', 'title: 0012', { title: '0012' }],
    ['a title on two lines', 'title: |\n  one\n  two\n', { title: 'one two' }],
    ['another experiment', 'experiment: Combination', { experiment: 'combination' }],
    ['a class list', 'class: ../lists/class 12.csv', { class: '../lists/class 12.csv' }],
    ['a box as a list', 'box: [1, 2, 2, 5]', { box: [1, 2, 2, 5] }],
    ['a box in a line', 'box: 1 2 2 5', { box: [1, 2, 2, 5] }],
    ['a box with commas', 'box: 0.5, 1,2', { box: [0.5, 1, 2] }],
    ['a box with decimal commas', 'box: 0,5; 1; 2', { box: [0.5, 1, 2] }],
    ['a decimal comma in print', 'decimal: Comma', { decimal: 'comma' }],
    ['the other gap', 'gap: RIGHT', { gap: 'right' }],
    ['rows in quotation marks', 'rows: "6"', { rows: 6 }],
    ['a window', 'window: 30-70', { window: [30, 70] }],
    ['a window in words', 'window: 30 to 70 cm', { window: [30, 70] }],
    ['a window as a list', 'window: [30.5, 70]', { window: [30.5, 70] }],
    ['a window with a dash', 'window: 30 – 70', { window: [30, 70] }],
    ['a one-page sheet', 'sections: practice', { sections: ['observations', 'working', 'result', 'cautions'] }],
    ['sections in any order, with the cautions', 'sections: [result, Aim, working]', { sections: ['aim', 'working', 'result', 'cautions'] }],
    ['sections in a line', 'sections: aim, result', { sections: ['aim', 'result', 'cautions'] }],
    ['one section', 'sections: viva', { sections: ['viva', 'cautions'] }],
    ['large print', 'size: 18 pt', { size: '18pt' }],
    ['yes', 'tables: yes\ndouble-sided: True', { tables: true, 'double-sided': true }],
    ['no', 'tables: no\ndouble-sided: Off', { tables: false, 'double-sided': false }],
    ['limits', 'limits:\n  l: 0.05\n  R: 0.5 %', { limits: { l: 0.05, R: 0.5 } }],
    ['one limit', 'limits: { R: 1 }', { limits: { l: 0.1, R: 1 } }],
    ['a seed that is kept as written', 'seed: 007', { seed: '007' }],
    ['a seed that looks like no', 'seed: no', { seed: 'no' }],
    ['entries left blank, which count as not written', 'rows:\nseed:\ntitle: ""\nlimits:', { rows: 4, title: '', limits: { l: 0.1, R: 0 } }],
    ['remarks', '# rows: 9\nrows: 5 # five', { rows: 5 }],
    ['Windows line ends', 'rows: 5\r\nhands: careful\r\n', { rows: 5, hands: 'careful' }],
  ])('takes %s', (_, yaml, values) => {
    expect(read(yaml)).toEqual({ ...read(''), ...values });
  });

  test('takes a mark at its start', () => {
    expect(readOrder(`\ufeff${WIRE}`, 'order.yaml', known)).toEqual(read(''));
  });

  test('has no seed where none is given, so that the pack is assessed', () => {
    expect(Object.keys(read('seed:\n'))).not.toContain('seed');
  });

  test('takes several wires, and gives each back in order', () => {
    const yaml = 'wires:\n  - constantan, SWG 28, 60 cm\n  - "nichrome, 0,38 mm, 0,5 m"\n';
    expect(readOrder(yaml, 'order.yaml', known).wires).toEqual([
      { material: 'constantan', gauge: { system: 'SWG', number: 28 }, lengthCm: 60 },
      { material: 'nichrome', gauge: { mm: '0.38' }, lengthCm: 50 },
    ]);
  });

  test('reads again as itself, through JSON', () => {
    const order = read('box: 0.1 0.2\nwindow: 45.5-55\nsections: viva\nlimits: {l: 0.05, R: 0.2}\ntables: yes\nseed: 7\ntitle: a\n');
    expect(checkOrder(JSON.parse(JSON.stringify(order)), known)).toEqual(order);
  });
});

test('a finished order that was tampered with is refused by entry', () => {
  const order = { ...read('seed: 7'), rows: 12, wires: [{ material: 'constantan', gauge: { mm: '0.38' }, lengthCm: 0 }] };
  expect(linesOf(() => checkOrder(order, known))).toEqual([
    'wires 1: 0 cm is not above zero; give the size of a real wire',
    'rows: "12" does not fit here; it takes a whole number from 3 to 6',
  ]);
  expect(linesOf(() => checkOrder(null, known))).toEqual(['the order is not a list of entries; write one entry a line, such as "rows: 4"']);
});

const FLAGS = {
  title: 'Class 12', experiment: 'combination', class: 'a.csv', wire: ['constantan, SWG 28, 60 cm', 'AWG 30 nichrome 0.5 m'], box: '1 2 2 5',
  gap: 'right', rows: '5', window: '30-70', hands: 'hurried', sections: 'aim,result', readings: 'blank',
  drawn: 'scale rule', 'latitude-null': '0.2', 'latitude-gauge': '2', 'latitude-length': '0', paper: 'Letter', size: '24pt',
  symbols: 'zigzag', rounding: 'up', tables: 'yes', decimal: 'comma', reasons: 'yes', 'limit-l': '0.05', 'limit-r': '0.5', resistivity: 'ncert', 'double-sided': 'yes', singles: 'no', language: 'en', seed: '007',
};
const FILE = `title: Class 12\nexperiment: combination\nclass: a.csv\nwires:\n- constantan, SWG 28, 60 cm\n- AWG 30 nichrome 0.5 m\nbox: 1 2 2 5
gap: right\nrows: 5\nwindow: 30-70\nhands: hurried\nsections: aim,result\nreadings: blank\ndrawn: scale rule\nlatitude:\n  l: 0.2\n  n: 2\n  L: 0\npaper: Letter\nsize: 24pt\nsymbols: zigzag\nrounding: up
tables: yes\ndecimal: comma\nreasons: yes\nlimits:\n  l: 0.05\n  R: 0.5\nresistivity: ncert\ndouble-sided: yes\nsingles: no\nlanguage: en\nseed: 007\n`;

describe('flags', () => {
  test('exist for every entry', () => {
    expect(Object.keys(FLAGS)).toEqual(orderFlags(known).map(({ name }) => name));
  });

  test('give the same order as a file', () => {
    expect(orderFromFlags(FLAGS, known)).toEqual(readOrder(FILE, 'order.yaml', known));
  });

  test('stand in place of what the file says', () => {
    const flagged = readOrder(FILE, 'order.yaml', known, { rows: '3', 'limit-r': '0', wire: ['manganin, SWG 30, 1 m'] });
    expect(flagged).toEqual({
      ...readOrder(FILE, 'order.yaml', known),
      rows: 3, limits: { l: 0.05, R: 0 }, wires: [{ material: 'manganin', gauge: { system: 'SWG', number: 30 }, lengthCm: 100 }],
    });
  });

  test('may mend what is wrong in the file', () => {
    expect(readOrder(`${WIRE}rows: nine\n`, 'order.yaml', known, { rows: '3' }).rows).toBe(3);
  });

  test('that are unset leave the file alone', () => {
    expect(readOrder(FILE, 'order.yaml', known, { rows: undefined })).toEqual(readOrder(FILE, 'order.yaml', known));
  });
});

const words = fc.constantFrom(
  'rows', 'wires', 'box', 'limits', 'title', 'seed', 'constantan', 'SWG 28', '60 cm', '4', ':', ': ', '- ', '-', '\n', '\n  ', '\t', '[', ']', '{', '}', ',', '"', "'",
  '&a', '*a', '<<', '!!int ', '!', '|', '>', '#', '%', '@', '---\n', '...', '? ', '\ufeff', '\0', 'é', '__proto__', '0x1', '~', 'null', '\\x', '\r',
);

const texts = fc.oneof(
  fc.array(words, { maxLength: 40 }).map((parts) => parts.join('')),
  fc.array(words, { maxLength: 12 }).map((parts) => WIRE + parts.join('')),
  fc.string({ unit: 'binary', maxLength: 200 }),
);

/** Whatever is thrown has to be a UserMistake, every part of which names the file. */
function readOrRefuse(run: () => void): void {
  try {
    run();
  } catch (error) {
    if (!(error instanceof UserMistake)) throw error;
    expect(error.mistakes.map(({ file }) => file)).toEqual(error.mistakes.map(() => 'order.yaml'));
  }
}

test('any text gives YAML values or a UserMistake that names the file', () => {
  fc.assert(fc.property(texts, (text) => {
    readOrRefuse(() => {
      const { values } = readYaml(text, 'order.yaml');
      expect(['undefined', 'string', 'object']).toContain(typeof values);
    });
  }), { numRuns: 2000 });
});

test('any text gives an order or a UserMistake that names the file', () => {
  fc.assert(fc.property(texts, (text) => {
    readOrRefuse(() => expect(readOrder(text, 'order.yaml', known).wires.length).toBeGreaterThan(0));
  }), { numRuns: 200 });
});
