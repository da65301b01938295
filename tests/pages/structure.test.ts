import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Press, openPress } from '../../generators/press/print.ts';
import { describeWith } from '../outside.ts';
import { packHtml } from './pack-html.ts';
import { type Element, all, structureOf } from './pdf-structure.ts';

describeWith(['qpdf'], 'the structure of every printed page', () => {
  let press: Press;
  let folder: string;
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'slidewire-structure-'));
    press = await openPress();
  }, 60_000);
  afterAll(async () => {
    await press.close();
    rmSync(folder, { recursive: true });
  });

  async function printed(order: string): Promise<Map<string, ReturnType<typeof structureOf>>> {
    const documents = await packHtml(order);
    const together = [...documents].filter(([name]) => !name.includes('single'));
    const out = new Map<string, ReturnType<typeof structureOf>>();
    for (const [i, [name, html]] of together.entries()) {
      const file = join(folder, `${i}.pdf`);
      await press.print(html, file);
      out.set(name, structureOf(file));
    }
    return out;
  }

  const orders = ['sections: record\n', 'sections: practice\npaper: Letter\n', 'readings: blank\n', 'drawn: scale plugs gauge rule\n'];

  it.each(orders)('%j: a title, a language, headings in order, tables with headings, a text alternative for every figure', { timeout: 120_000 }, async (order) => {
    for (const [name, { root, language, title }] of await printed(order)) {
      const elements = all(root);
      expect(language, name).toBe('en');
      expect(title, name).toMatch(/\w/);
      expect(headingFaults(elements), name).toEqual([]);
      expect(tableFaults(elements), name).toEqual([]);
      expect(elements.filter(({ tag, alt }) => tag === 'Figure' && !alt?.trim()), name).toEqual([]);
      expect(elements.filter(({ tag }) => tag === 'Formula'), name).toEqual([]);
    }
  });
});

/** Headings that skip a level: every sheet starts anew at H1. */
function headingFaults(elements: Element[]): string[] {
  const levels = elements.flatMap(({ tag }) => (/^H[1-6]$/.test(tag) ? [Number(tag[1])] : []));
  if (levels[0] !== 1) return ['the first heading is not an H1'];
  return levels.flatMap((level, i) => (i > 0 && level > levels[i - 1]! + 1 ? [`H${level} after H${levels[i - 1]}`] : []));
}

function tableFaults(elements: Element[]): string[] {
  return elements
    .filter(({ tag }) => tag === 'Table')
    .flatMap((table) => {
      const inside = all(table).map(({ tag }) => tag);
      return [...(inside.includes('TH') ? [] : ['a table without headings']), ...(inside.includes('Caption') ? [] : ['a table without caption'])];
    });
}
