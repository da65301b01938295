/** The most memory that our own process takes while it lays out a pack, each class in a process of its own; nothing is printed. */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { spareMemory } from '../../generators/press/spare-memory.ts';
import { classWork, layOut } from './class-pack.ts';

const CLASSES = [200, 2000];
const asked = process.env['BENCH_CLASS'];

if (asked === undefined) {
  for (const students of CLASSES) {
    const args = ['--import', 'tsx', fileURLToPath(import.meta.url)];
    process.stdout.write(execFileSync(process.execPath, args, { env: { ...process.env, BENCH_CLASS: String(students) }, stdio: ['ignore', 'pipe', 'inherit'] }));
  }
} else {
  const students = Number(asked);
  spareMemory(students);
  const work = classWork(students);
  let documents = 0;
  let largest = 0;
  await layOut(work, (html) => {
    documents++;
    largest = Math.max(largest, html.length);
  });
  const peak = process.resourceUsage().maxRSS / 1000;
  console.log(`${students} students: ${documents} documents, the largest of ${(largest / 1e6).toFixed(1)} MB; at most ${peak.toFixed(0)} MB`);
}
