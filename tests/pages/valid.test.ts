import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { experiments } from '../../generators/experiments/index.ts';
import { describeWith } from '../outside.ts';
import { packHtml } from './pack-html.ts';

const vnu = createRequire(import.meta.url)('vnu-jar') as string;

/** What the Nu HTML Checker says of documents: one line a fault, nothing where all are valid. */
function faults(documents: Map<string, string>): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'slidewire-valid-'));
  const files = [...documents.values()].map((html, i) => {
    const file = join(folder, `${i}.html`);
    writeFileSync(file, html);
    return file;
  });
  return new Promise((done) => {
    execFile('java', ['-jar', vnu, '--errors-only', ...files], { maxBuffer: 1e8 }, (_, __, stderr) => {
      rmSync(folder, { recursive: true });
      done(stderr.replaceAll(folder, ''));
    });
  });
}

describeWith(['java'], 'every page of a pack is valid HTML with its MathML and SVG', () => {
  it.each([
    ['the full record', 'sections: record\n'],
    ['the practice page', 'sections: practice\nsize: 24pt\nsymbols: zigzag\n'],
    ['readings left blank', 'readings: blank\n'],
    ['readings off drawings', 'drawn: scale plugs gauge rule\n'],
  ])('%s', { timeout: 120_000 }, async (_, order) => {
    expect(await faults(await packHtml(order))).toBe('');
  });

  it('every experiment, on its usual wires', { timeout: 240_000 }, async () => {
    const all = new Map<string, string>();
    for (const [id, { readingsGiven }] of Object.entries(experiments)) {
      for (const readings of readingsGiven ? ['printed'] : ['printed', 'blank']) {
        for (const [file, html] of await packHtml(`experiment: ${id}\nreadings: ${readings}\nsingles: no\n`)) all.set(`${id}/${readings}/${file}`, html);
      }
    }
    expect(all.size).toBeGreaterThan(50);
    expect(await faults(all)).toBe('');
  });

  it('finds a planted fault', { timeout: 120_000 }, async () => {
    expect(await faults(new Map([['x', '<!doctype html><html lang="en"><title>x</title><p><math><mfrac><mn>1</mn></mfrac></math><b>']]))).not.toBe('');
  });
});
