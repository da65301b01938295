import { execFileSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { describe } from 'vitest';

/** Debian's own Python, whose packages come from apt. */
const PYTHON = '/usr/bin/python3';

/** Like `describe`; without one of the programs it fails under CI and skips elsewhere, saying so. */
export function describeWith(programs: string[], title: string, body: () => void): void {
  describeUnless(programs.filter((program) => !onPath(program)), title, body);
}

/** Like `describeWith`, for packages of Debian's Python. */
export function describeWithPython(packages: string[], title: string, body: () => void): void {
  describeUnless(packages.filter((name) => !works(PYTHON, '-c', `import ${name}`)).map((name) => `python3-${name}`), title, body);
}

/** What a Python program prints as JSON, given something on its standard input as JSON. */
export function python<T>(program: string, input: unknown): T {
  return JSON.parse(execFileSync(PYTHON, ['-c', program], { encoding: 'utf8', input: JSON.stringify(input), maxBuffer: 1e8 })) as T;
}

/** Like `describe` where nothing is missing; else it fails under CI and skips elsewhere, saying what is. */
export function describeUnless(missing: string[], title: string, body: () => void): void {
  if (missing.length === 0) return void describe(title, body);
  const word = `${missing.join(' and ')} missing`;
  if (process.env['CI']) throw new Error(`${title}: ${word}`);
  describe.skip(`${title} (skipped: ${word})`);
}

function works(program: string, ...args: string[]): boolean {
  try {
    execFileSync(program, args, { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

function onPath(program: string): boolean {
  return (process.env['PATH'] ?? '').split(delimiter).some((folder) => {
    try {
      accessSync(join(folder, program), constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}
