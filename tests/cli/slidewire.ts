import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, vi } from 'vitest';
import { type Commands, main } from '../../generators/cli/main.ts';

export interface Run {
  code: number;
  out: string;
  err: string;
}

/** Runs a command line in this process. */
export async function slidewire(args: string[], commands?: Commands): Promise<Run> {
  const said = { out: '', err: '' };
  const catching = (into: 'out' | 'err') => (text: string | Uint8Array) => {
    said[into] += String(text);
    return true;
  };
  const out = vi.spyOn(process.stdout, 'write').mockImplementation(catching('out'));
  const err = vi.spyOn(process.stderr, 'write').mockImplementation(catching('err'));
  try {
    return { code: await main(args, commands), ...said };
  } finally {
    out.mockRestore();
    err.mockRestore();
  }
}

/** A folder of its own for a test file, with what is written into it; gone at the end. */
export function scratch(): { at(...path: string[]): string; write(path: string, text: string | Uint8Array): string } {
  const folder = mkdtempSync(join(tmpdir(), 'slidewire-test-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const at = (...path: string[]) => join(folder, ...path);
  return {
    at,
    write(path, text) {
      mkdirSync(dirname(at(path)), { recursive: true });
      writeFileSync(at(path), text);
      return at(path);
    },
  };
}

export const WIRE = 'constantan, SWG 28, 60 cm';
