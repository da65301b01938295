import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadFigureWords } from '../../generators/cli/content.ts';
import { gallery } from '../../generators/figures/gallery.ts';

describe('npm run gallery', () => {
  let folder: string;
  let html: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'slidewire-gallery-'));
    execFileSync('npm', ['run', 'gallery', '--', `--output=${folder}`], { stdio: 'pipe', shell: process.platform === 'win32' });
    html = readFileSync(join(folder, 'gallery', 'index.html'), 'utf8');
  }, 60_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('shows every figure in every variant, with its caption', () => {
    const exhibits = gallery(loadFigureWords('en'));
    expect(exhibits.length).toBeGreaterThan(0);
    for (const { id, svg } of exhibits) {
      expect(html).toContain(`<figure id="${id}">`);
      expect(html).toContain(svg);
    }
    expect(html.match(/<figcaption>/g)).toHaveLength(exhibits.length);
  });

  it('asks nothing of the network', () => {
    expect(html).not.toMatch(/(?:src|href)=["']?https?:|url\(["']?https?:/);
  });
});
