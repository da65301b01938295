import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { findBrowser } from '../../generators/press/browser.ts';
import { wholeFolder } from '../../generators/press/whole-folder.ts';
import { describeUnless } from '../outside.ts';
import { scratch, slidewire, WIRE } from './slidewire.ts';

const program = fileURLToPath(new URL('../../generators/cli/slidewire.js', import.meta.url));
const browser = await findBrowser().then(() => [], () => ['a browser']);
const { at, write } = scratch();
write('class.csv', 'roll,name\n1,Perrin Oakhollow\n2,Sabra Lintwick\n');
const order = write('order.yaml', `class: class.csv\nwires: "${WIRE}"\nsections: practice\nseed: spring\n`);
const disk = at('disk');
mkdirSync(disk);

/** Runs a shell in which a disk of its own, in memory, stands at `disk`; it is gone with the shell. */
function onDisk(options: string, commands: string): string {
  const script = `mount -t tmpfs -o size=${options} tmpfs "${disk}"\n${commands}`;
  const env = { ...process.env, NODE: process.execPath, PROGRAM: program, ORDER: order, DISK: disk };
  return spawnSync('unshare', ['--map-root-user', '--mount', 'sh', '-euc', script], { encoding: 'utf8', env }).stdout;
}

/** Runs the program, with its messages and its exit code in the output. */
const SLIDEWIRE = 'slidewire() { "$NODE" "$PROGRAM" "$@" 2>&1 && echo "code 0" || echo "code $?"; }\n';

/** Containers often forbid it, and no package can change that: so it is left out with a word even on CI. */
const mounts = (() => {
  try {
    return onDisk('300k', 'echo yes') === 'yes\n';
  } catch {
    return false;
  }
})();

describe.skipIf(!mounts)(`a disk of its own${mounts ? '' : ' (skipped: this user may not mount one)'}`, () => {
  describeUnless(browser, 'that is full', () => {
    test('stops a pack with a clear word, and leaves nothing of it', () => {
      const out = onDisk('300k', `${SLIDEWIRE}slidewire pack "$ORDER" --out "$DISK/pack"\nls -A "$DISK"`);
      expect(out).toContain(`${disk}/pack: the disk is full; make room and run the command again\ncode 1\n`);
      expect(out).not.toMatch(/\n +at /);
      expect(out.endsWith('code 1\n')).toBe(true);
    });

    test('leaves a pack that was there as it was, when it is made again or a set is added', () => {
      const sums = '(cd "$DISK" && find . -type f -exec sha256sum {} + | sort > "$DISK/../$1")';
      const out = onDisk('4m', [
        `${SLIDEWIRE}sums() { ${sums}; }`,
        'slidewire pack "$ORDER" --out "$DISK/pack" > /dev/null',
        'sums before',
        'free=$(df --output=avail -k "$DISK" | tail -1)',
        'head -c "$((free - 100))k" /dev/zero > "$DISK/../filler" && cp "$DISK/../filler" "$DISK/filler"',
        'slidewire pack "$ORDER" --out "$DISK/pack"',
        'slidewire pack --again 1 --out "$DISK/pack"',
        'rm "$DISK/filler"',
        'sums after',
        'cmp "$DISK/../before" "$DISK/../after" && echo same',
        'ls -A "$DISK"',
      ].join('\n'));
      expect(out.match(/the disk is full; make room and run the command again\ncode 1\n/g)).toHaveLength(2);
      expect(out).toMatch(/\nsame\npack\n$/);
    });
  });

  test('that is full stops a ledger with a clear word, and leaves nothing of it', () => {
    const out = onDisk('300k', `${SLIDEWIRE}head -c 1m /dev/zero > "$DISK/filler" 2> /dev/null || true\nslidewire issue "$ORDER" --out "$DISK/ledger.json"\nls -A "$DISK"`);
    expect(out).toContain(`${disk}/ledger.json: the disk is full; make room and run the command again\ncode 1\nfiller\n`);
  });

  test('that cannot be written to is named', () => {
    const out = onDisk('300k,ro', `${SLIDEWIRE}slidewire pack "$ORDER" --out "$DISK/pack"\nslidewire issue "$ORDER" --out "$DISK/ledger.json"\nslidewire issue "$ORDER" --out "$DISK/a/ledger.json"`);
    expect(out).toContain(`${disk}/pack: this disk cannot be written to; choose another place with --out\ncode 1\n`);
    expect(out).toContain(`${disk}/ledger.json: this disk cannot be written to; choose another place with --out\ncode 1\n`);
    expect(out).toContain(`${disk}/a/ledger.json: a folder on the way cannot be made; choose another place with --out\ncode 1\n`);
  });
});

const root = process.getuid?.() === 0;
describe.skipIf(root || process.platform === 'win32')(`a folder that may not be written${root ? ' (skipped: root may write anywhere)' : ''}`, () => {
  test('is named, and nothing is left in it', async () => {
    mkdirSync(at('locked'));
    chmodSync(at('locked'), 0o555);
    for (const args of [['pack', order, '--out', at('locked', 'pack')], ['issue', order, '--out', at('locked', 'ledger.json')]]) {
      expect(await slidewire(args)).toMatchObject({ code: 1, err: expect.stringContaining(`${args.at(-1)}: you may not write here; choose another place with --out\n`) });
    }
    expect(readdirSync(at('locked'))).toEqual([]);
  });
});

describe('a device that is always full', () => {
  test.skipIf(process.platform !== 'linux')('fills no folder (Linux: /dev/full)', async () => {
    writeFileSync(at('before'), '');
    const attempt = wholeFolder(at('full'), () => writeFile('/dev/full', 'anything'));
    await expect(attempt).rejects.toThrow(`${at('full')}: the disk is full; make room and run the command again`);
    expect(readdirSync(at('.')).filter((name) => name.startsWith('full'))).toEqual([]);
  });
});
