/** A single student's pack, by the command: with all caches of the program empty, and again with them filled. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { writeClass } from './class-pack.ts';
import { median } from './median.ts';

const ROUNDS = Number(process.env['BENCH_ROUNDS'] ?? 3);
const PROGRAM = fileURLToPath(new URL('../../generators/cli/slidewire.js', import.meta.url));

/** The translated sources are kept in the temporary folder, so that a new one is a cold start; the disk's own cache stays. */
function timed(folder: string): number {
  const files = writeClass(folder, 1);
  const from = performance.now();
  execFileSync(process.execPath, [PROGRAM, 'pack', files.order, '--class', files.class, '--out', join(folder, 'pack')], { env: { ...process.env, TMPDIR: folder }, stdio: 'pipe' });
  const spent = (performance.now() - from) / 1000;
  rmSync(join(folder, 'pack'), { recursive: true });
  return spent;
}

const rounds = Array.from({ length: ROUNDS }, () => {
  const folder = mkdtempSync(join(tmpdir(), 'slidewire-bench-'));
  const both = { cold: timed(folder), warm: timed(folder) };
  rmSync(folder, { recursive: true });
  return both;
});
console.log(`a single student's pack: cold ${median(rounds.map(({ cold }) => cold)).toFixed(2)} s, warm ${median(rounds.map(({ warm }) => warm)).toFixed(2)} s (medians of ${ROUNDS})`);
