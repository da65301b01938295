import { describe, expect, test } from 'vitest';
import { loadWords } from '../../generators/cli/content.ts';
import { resultName } from '../../generators/cli/plan-words.ts';
import { experiments } from '../../generators/experiments/index.ts';
import { findBrowser } from '../../generators/press/browser.ts';
import { describeUnless } from '../outside.ts';
import { scratch, slidewire, WIRE } from './slidewire.ts';

const { write } = scratch();
const COPPER = 'copper, SWG 18, 50 cm';
const browser = await findBrowser().then(() => [], () => ['a browser']);

/** Plans with a browser that cannot be, so that nothing is printed. */
async function plan(...args: string[]) {
  const before = process.env['PUPPETEER_EXECUTABLE_PATH'];
  process.env['PUPPETEER_EXECUTABLE_PATH'] = '/nowhere/browser';
  try {
    return await slidewire(['plan', ...args]);
  } finally {
    if (before === undefined) delete process.env['PUPPETEER_EXECUTABLE_PATH'];
    else process.env['PUPPETEER_EXECUTABLE_PATH'] = before;
  }
}

describe('a plan', () => {
  test('tells settings with their null points, all that are usable, the worst case, the 95 % interval, and how far sets lie apart', async () => {
    const { code, out } = await plan('--wire', WIRE, '--wire', 'nichrome, SWG 26, 45 cm');
    expect(code).toBe(0);
    const [wire, settings, usable, worst, interval] = out.split('\n');
    expect(wire).toBe(WIRE);
    // ρ L / A with 49e-8 Ω m (OpenStax, College Physics 2e) and SWG 28, 0.376 mm (BS 3737): 2.648 Ω.
    expect(settings).toMatch(/^ +X about 2\.65 Ω, R /);
    const pairs = [...settings!.matchAll(/([\d.]+) Ω \(null at ([\d.]+) cm\)/g)].map(([, R, l]) => [Number(R), Number(l)]);
    expect(pairs).toHaveLength(4);
    for (const [R, l] of pairs) expect(Math.abs(l! - (100 * R!) / (R! + 2.648))).toBeLessThan(0.1);
    expect(usable).toMatch(/^ +usable: \d+ settings from /);
    expect(worst).toMatch(/^ +maximum permissible error of the readings: X ± [\d.]+ %, ρ ± [\d.]+ %$/);
    expect(interval).toMatch(/^ +95 % interval, scatter and apparatus included: X ± [\d.]+ %, ρ ± [\d.]+ %$/);
    expect(out).toMatch(/30 students/);
  });

  test('without a browser says everything but the paper, and why', async () => {
    const { code, out, err } = await plan('--wire', WIRE);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('maximum permissible error');
    expect(out.trimEnd().split('\n').at(-1)).toBe('Paper not counted: PUPPETEER_EXECUTABLE_PATH is /nowhere/browser, which is not a program; correct it, or unset it');
  });

  test('counts the students of the class list, and plans a wire that one of them has alone', async () => {
    const list = write('class.csv', 'roll,name,wire\n1,A,\n2,B,"manganin, 0.38 mm, 90 cm"\n');
    const { out } = await plan('--wire', WIRE, '--class', list);
    expect(out).toContain('2 students of the class list');
    expect(out).toContain('\nmanganin, 0.38 mm, 90 cm\n');
  });
});

test.each(Object.values(experiments))('$id: its results have names that people use', ({ id, layout }) => {
  const { values } = loadWords('en', id).experiment;
  for (const result of layout.uncertain) expect(resultName(result, values)).not.toMatch(/[a-z][A-Z]/);
});

describeUnless(browser, 'a plan with a browser', () => {
  test('counts the pages of worksheet and key for each student', async () => {
    const { code, out } = await slidewire(['plan', '--wire', WIRE, '--sections', 'practice']);
    expect(code).toBe(0);
    expect(out).toMatch(/\nWorksheets: 30 × \d+ pages \(\d+ sheets of paper printed on both sides, \d+ on one\)\nKeys: 30 × \d+ pages/);
  });
});

describe.each(['plan', 'pack'])('%s refuses', (command) => {
  const list = write('two.csv', `roll,name,wire\n1,A,\n2,B,"${COPPER}"\n`);
  const run = (...args: string[]) => (command === 'plan' ? plan(...args) : slidewire(['pack', ...args, '--class', list, '--out', `${list}-pack`]));

  test('half a metre of SWG 18 copper, once, where it stands, with why and what would do', async () => {
    const file = write('copper.yaml', `wires:\n  - ${WIRE}\n  - ${COPPER}\n`);
    const { code, out, err } = await run(file);
    expect(code).toBe(1);
    // 1.7241e-8 Ω m (IEC 60028) × 0.5 m over the section of 1.219 mm (BS 3737, SWG 18): 0.00739 Ω.
    expect(err).toMatch(/^copper\.yaml, wires 2: copper, SWG 18, 50 cm: its resistance is about 0\.00739 Ω, and no setting of the box balances between 40 and 60 cm, where 4 rows are wanted\. What would do:\n {4}a wire of SWG \d+: X about /);
    expect(`${out}${err}`.match(/copper, SWG 18/g)).toHaveLength(1);
    expect(err).not.toMatch(/\n +at /);
  });

  test('a wire of one student at the row of the class list', async () => {
    const { code, err } = await run('--wire', WIRE, ...(command === 'plan' ? ['--class', list] : []));
    expect(code).toBe(1);
    expect(err).toMatch(/^two\.csv, row 3, wire: copper, SWG 18, 50 cm: its resistance/);
  });

  test('every wire that the source of resistivities has no value for, at once', async () => {
    const file = write('ncert.yaml', 'wires: ["constantan, SWG 28, 60 cm", "manganin, SWG 30, 55 cm", "german silver, SWG 30, 55 cm"]\nresistivity: ncert\n');
    const { code, err } = await run(file);
    expect(code).toBe(1);
    const lines = err.trim().split('\n').filter((line) => line.startsWith('ncert.yaml'));
    expect(lines).toEqual([
      'ncert.yaml, wires 1: constantan, SWG 28, 60 cm: no value for constantan from "ncert"; choose one of openstax-college, openstax-university, maker',
      'ncert.yaml, wires 3: german silver, SWG 30, 55 cm: no value for german silver from "ncert"; choose one of maker',
    ]);
  });
});

test('each change that is offered does: the order with it is planned without complaint', async () => {
  const wire = { material: 'nichrome', gauge: 'SWG 40', cm: 100 };
  const written = (changed: Partial<typeof wire>) => Object.values({ ...wire, ...changed }).join(', ');
  const args = (text: string) => ['--wire', `${text} cm`, '--rows', '6', '--window', '49-54'];
  const { code, err } = await plan(...args(written({})));
  expect(code).toBe(1);
  const offers = err.split('\n').slice(1).filter(Boolean);
  const applied = offers.map((offer) => {
    const [, length] = /a length of (\S+) cm:/.exec(offer) ?? [];
    const [, gauge] = /a wire of (SWG \d+):/.exec(offer) ?? [];
    const [, box] = /a box with the plugs (.+) Ω: X/.exec(offer) ?? [];
    const [, window] = /a window of (\S+) cm:/.exec(offer) ?? [];
    if (length) return args(written({ cm: Number(length) }));
    if (gauge) return args(written({ gauge }));
    if (box) return [...args(written({})), '--box', box];
    if (window) return [...args(written({})).slice(0, 4), '--window', window];
    throw new Error(`an offer of another kind: ${offer}`);
  });
  expect(applied).toHaveLength(4);
  for (const [i, changed] of applied.entries()) {
    const settings = offers[i]!.replace(/^.*?: (?=X)/, '').trim();
    const { code: accepted, out } = await plan(...changed);
    expect(accepted, offers[i]).toBe(0);
    expect(out).toContain(settings);
  }
});
