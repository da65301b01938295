import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { knownNames, loadTables } from '../../generators/cli/content.ts';
import { experiments } from '../../generators/experiments/index.ts';
import { describeOrder } from '../../generators/order/flags.ts';

const readme = readFileSync('README.md', 'utf8');

/** The rows that the README's table of entries must hold, made from the schema. */
function rows(): string[] {
  const cell = (text: string) => text.replaceAll('|', '\\|');
  return describeOrder(knownNames(loadTables())).map(({ key, flag, meaning, takes, fallback, without = fallback ?? '' }) =>
    `| \`${key}\` | \`${flag}\` | ${cell(meaning)} | ${cell(takes)} | ${cell(without)} |`,
  );
}

describe('README', () => {
  it('opens with one paragraph that names the teacher, the exam setter and the student', () => {
    const [, paragraph = ''] = readme.split('\n\n');
    for (const who of ['teacher', 'exam setter', 'student']) expect(paragraph).toContain(who);
  });

  it('lists every experiment', () => {
    for (const id of Object.keys(experiments)) expect(readme).toMatch(new RegExp(`^\\| \`${id}\` \\|`, 'm'));
  });

  it.each(rows())('lists what an order may say: %s', (row) => {
    expect(readme).toContain(row);
  });
});
