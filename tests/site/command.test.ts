import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { site } from '../../generators/cli/site.ts';
import { UserMistake } from '../../generators/mistake.ts';

describe('slidewire site', () => {
  let folder: string;
  beforeAll(() => void (folder = mkdtempSync(join(tmpdir(), 'slidewire-site-'))));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it.each([
    [[], /say where the site goes/],
    [['order.yaml', '--out', 'there'], /takes no order/],
    [['--out', 'there', '--without', 'my-reading'], /did you mean my-readings/],
    [['--out', 'there', '--without', 'everything'], /no part that can be left out/],
    [['--ou', 'there'], /no flag --ou/],
  ])('refuses %j', async (args, message) => {
    const refused = await site.run(args).catch((error: unknown) => error);
    expect(refused).toBeInstanceOf(UserMistake);
    expect((refused as UserMistake).message).toMatch(message);
    expect(existsSync('there')).toBe(false);
  });

  it('does not write over a folder that holds something else', async () => {
    writeFileSync(join(folder, 'marks.txt'), 'dear to someone');
    await expect(site.run(['--out', folder])).rejects.toThrow(/holds no site/);
  });

  it('tells its flags', () => {
    expect(site.help()).toMatch(/--out[^]*--without/);
  });
});
