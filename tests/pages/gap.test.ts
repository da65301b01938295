import { expect, it } from 'vitest';
import { packHtml } from './pack-html.ts';

const worksheet = async (order: string) => [...(await packHtml(order))].find(([name]) => name.includes('students/worksheets'))![1];

it.each([
  ['the order where the sheet uses one gap', 'gap: right\n', 'X is connected across the left gap, R across the right gap'],
  ['the procedure where it uses both, whatever the order says', 'experiment: interchange\ngap: right\n', 'R is connected across the left gap, X across the right gap'],
])('the circuit is drawn as %s', async (_, order, words) => {
  expect((await worksheet(order)).replace(/\s+/g, ' ')).toContain(words);
});
