import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { scratch, WIRE } from '../cli/slidewire.ts';
import { describeUnless } from '../outside.ts';

const checkout = fileURLToPath(new URL('../..', import.meta.url));
const { at, write } = scratch();

/** The surroundings without what an npm that runs this test says about the checkout. */
const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^npm_(package|lifecycle|config_local_prefix|command|execpath)|^INIT_CWD$/i.test(name)));
const NPM = process.platform === 'win32' ? 'npm.cmd' : 'npm';

function npm(cwd: string, ...args: string[]): string {
  return execFileSync(NPM, args, { cwd, env, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'], shell: process.platform === 'win32' });
}

function registryMissing(): string[] {
  try {
    npm(checkout, 'view', 'decimal.js', 'version', '--fetch-retries=0', '--fetch-timeout=15000');
    return [];
  } catch {
    return ['an npm registry that answers'];
  }
}

interface Packed {
  filename: string;
  files: { path: string }[];
}

const pack = (...args: string[]) => (JSON.parse(npm(checkout, 'pack', '--json', ...args)) as Packed[])[0]!;

describe('the package', () => {
  const paths = pack('--dry-run').files.map(({ path }) => path);

  test('holds generators, templates and content whole', () => {
    for (const folder of ['generators', 'templates', 'content']) {
      const all = readdirSync(join(checkout, folder), { recursive: true, withFileTypes: true }).filter((each) => each.isFile());
      const names = all.map(({ parentPath, name }) => join(parentPath, name).slice(checkout.length).replaceAll('\\', '/'));
      expect(paths).toEqual(expect.arrayContaining(names));
    }
  });

  test('holds nothing else but what describes it: no tests, nothing built, nothing of this machine', () => {
    const others = paths.filter((path) => !/^(generators|templates|content)\//.test(path)).sort();
    expect(others).toEqual(['.eleventy.js', 'CHANGELOG.md', 'DEVELOPERS.md', 'LICENSE', 'README.md', 'package.json', 'tsconfig.json']);
    expect(paths.filter((path) => /\.test\.ts$|\.pdf$|\.tgz$|ledger/.test(path))).toEqual(['generators/sheets/ledger.ts']);
  });
});

describeUnless(registryMissing(), 'the package, installed into another folder', () => {
  const project = at('project');
  const elsewhere = at('elsewhere');
  const slidewire = (...args: string[]) => npm(elsewhere, 'exec', '--prefix', project, '--offline', '--', 'slidewire', ...args);

  beforeAll(() => {
    mkdirSync(project);
    const { filename } = pack('--pack-destination', at('.'));
    write('project/package.json', '{ "private": true }');
    npm(project, 'install', '--prefer-offline', '--no-audit', '--no-fund', at(filename));
    write('elsewhere/class.csv', 'roll,name\n7,Perrin Oakhollow\n');
    write('elsewhere/order.yaml', `class: class.csv\nwires: "${WIRE}"\nsections: practice\n`);
  }, 300_000); // the bundled browser alone is a download of 64 MB

  test('says how it is used, from a third folder', () => {
    expect(slidewire('help')).toContain('slidewire pack ORDER.yaml --out DIR');
  });

  test('plans, with the paper counted in print', () => {
    const out = slidewire('plan', 'order.yaml');
    expect(out).toContain('X about 2.65 Ω');
    expect(out).toMatch(/^Worksheets: 1 × \d+ pages/m);
  });

  test('makes a pack', () => {
    expect(slidewire('pack', 'order.yaml', '--out', 'pack')).toContain('1 student.');
    expect(readdirSync(join(elsewhere, 'pack', 'students', 'single'))).toEqual(['worksheet-1-roll-7.pdf']);
    expect(existsSync(join(elsewhere, 'pack', 'teacher', 'ledger.json'))).toBe(true);
  });
});

test('npx slidewire works in the checkout', () => {
  expect(npm(checkout, 'exec', '--offline', '--', 'slidewire', 'help')).toContain('slidewire plan ORDER.yaml');
});
