import { mkdirSync } from 'node:fs';
import { afterAll, expect, test, vi } from 'vitest';
import { loadTables } from '../../generators/cli/content.ts';
import { makeLedger } from '../../generators/sheets/ledger.ts';
import { issuesOf, orderOf, SECRET } from '../sheets/class.ts';
import { scratch } from './slidewire.ts';

const { at } = scratch();
const order = orderOf('');
const ledger = makeLedger({ kind: 'assessed', secret: SECRET, orderDigest: 'a'.repeat(64), order }, issuesOf(order, [{ roll: '1', name: 'Perrin Oakhollow' }]));
const tables = loadTables();
afterAll(() => vi.resetModules());

/** Fills a pack with a press of the test's, where the part that lays out cannot be loaded. */
async function fillWith(openPress: () => Promise<{ close(): Promise<void> }>): Promise<void> {
  vi.resetModules();
  vi.doMock('../../generators/press/print.ts', () => ({ openPress }));
  vi.doMock('../../generators/cli/pack-files.ts', () => {
    throw new Error('a module is broken');
  });
  const { fillPack } = await import('../../generators/cli/fill.ts');
  mkdirSync(at('partial'), { recursive: true });
  await fillPack({ folder: at('pack'), partial: at('partial'), order, tables, ledger });
}

test('where what lays out cannot be loaded, the browser that was starting meanwhile is closed, and the cause is told', async () => {
  const close = vi.fn(async () => {});
  const slow = async () => {
    await new Promise((resolve) => setTimeout(resolve, 50));
    return { close };
  };
  await expect(fillWith(slow)).rejects.toMatchObject({ cause: { message: 'a module is broken' } });
  expect(close).toHaveBeenCalledOnce();
});

test('where the browser does not start, that is told', async () => {
  await expect(fillWith(() => Promise.reject(new Error('no browser')))).rejects.toThrow('no browser');
});
