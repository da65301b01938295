import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildSite } from '../../generators/cli/site/build-site.ts';
import { experiments } from '../../generators/experiments/index.ts';

let folder: string;
let pages: string[];
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'slidewire-site-'));
  await buildSite(folder, 'en');
  pages = (readdirSync(folder, { recursive: true }) as string[]).filter((name) => name.endsWith('.html')).sort();
}, 180_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const text = (file: string) => readFileSync(join(folder, file), 'utf8');
const compressed = (file: string) => gzipSync(readFileSync(join(folder, file))).length;

describe('the site', () => {
  it('has a page for every experiment and for what else there is, and every link and file that they name', () => {
    const named = ['about.html', 'experiments.html', 'index.html', 'my-readings.html', 'reference.html', 'my-readings/resistivity.html', ...Object.keys(experiments).map((id) => `experiments/${id}.html`)];
    expect(pages).toEqual(expect.arrayContaining(named));
    for (const page of pages) {
      const links = [...text(page).matchAll(/(?:href|src)="([^"]*)"/g)].map(([, link]) => link!);
      expect(links.length).toBeGreaterThan(4);
      for (const link of links) {
        const [file, place] = link.split('#');
        const target = file === '' ? page : join(dirname(page), file!);
        expect(() => text(target!), `${page}: ${link}`).not.toThrow();
        if (place !== undefined) expect(text(target), `${page}: ${link}`).toContain(`id="${place}"`);
      }
    }
  });

  it('can be reached all over from its start', () => {
    const found = new Set<string>();
    const follow = (page: string): void => {
      if (found.has(page)) return;
      found.add(page);
      for (const [, link] of text(page).matchAll(/href="([^"#]+\.html)/g)) follow(join(dirname(page), link!));
    };
    follow('index.html');
    expect([...found].sort()).toEqual(pages);
  });

  it('gives every page its language, a title of its own, one heading, and a way past the links', () => {
    const titles = pages.map((page) => /<title>([^<]+)<\/title>/.exec(text(page))![1]);
    expect(new Set(titles).size).toBe(pages.length);
    for (const page of pages) {
      expect(text(page), page).toMatch(/^<!doctype html>\s*<html lang="en"/);
      expect(text(page).match(/<h1[ >]/g), page).toHaveLength(1);
      expect(text(page).match(/<a[ >][^>]*>/)![0], page).toBe('<a class="skip" href="#text">');
      expect(text(page), page).toMatch(/<main id="text"/);
    }
  });

  it('groups every experiment once on the page of experiments, each with a sentence that begins with a capital', () => {
    const listed = [...text('experiments.html').matchAll(/<li><a href="experiments\/([a-z-]+)\.html">[^<]+<\/a><p>([^<]+)<\/p>/g)];
    expect(listed.map(([, id]) => id).sort()).toEqual(Object.keys(experiments).sort());
    for (const [, id, about] of listed) expect(about, id).toMatch(/^(?:\p{Lu}|α)/u);
  });

  it('asks nobody else for anything, and lets no page do so', () => {
    for (const file of readdirSync(folder, { recursive: true }) as string[]) {
      if (!/\.(?:html|css|js)$/.test(file)) continue;
      expect(text(file), file).not.toMatch(/(?:src|href)=["']?(?:https?:)?\/\/|url\(["']?(?:https?:)?\/\/|import\(|\bXMLHttpRequest\b|sendBeacon/);
      expect(text(file), file).not.toMatch(/new Function|\beval\(/);
    }
    for (const page of pages) {
      expect(text(page)).toContain("default-src 'none'; script-src 'self'; style-src 'self'");
      expect(text(page), page).not.toMatch(/<script(?![^>]* src=)|<style|<script[^>]*type="module"/);
    }
  });

  it('keeps the scripts of a page below 60 kB compressed, and a first visit with its fonts below 300 kB', () => {
    const always = ['notebook.css', ...readdirSync(join(folder, 'fonts')).map((font) => join('fonts', font))];
    const common = always.reduce((sum, file) => sum + compressed(file), 0);
    for (const page of pages) {
      const scripts = [...text(page).matchAll(/<script src="([^"]+)"/g)].reduce((sum, [, script]) => sum + compressed(join(dirname(page), script!)), 0);
      expect(scripts, page).toBeLessThan(60_000);
      expect(common + compressed(page) + scripts, page).toBeLessThan(300_000);
    }
  });

  it('fetches less than 300 kB compressed before the first page that is kept can be used without a connection, and less than two megabytes for all', () => {
    const { files, shared } = JSON.parse(/^self\.slidewireFiles=(.*);$/m.exec(text('offline.js'))![1]!) as { files: string[]; shared: string[] };
    const sum = (of: string[]) => of.reduce((all, file) => all + compressed(file), 0);
    expect(files).toEqual(expect.arrayContaining([...pages, ...shared]));
    for (const page of pages) expect(sum([...new Set([...shared, page, page.replace('.html', '.js')])].filter((file) => files.includes(file))), page).toBeLessThan(300_000);
    // So many are told of on the page about the site.
    expect(sum(files)).toBeLessThan(2_000_000);
    expect(text('about.html')).toContain('less than two megabytes');
  });

  it('holds no secret and nothing that makes sheet codes', () => {
    for (const file of (readdirSync(folder, { recursive: true }) as string[]).filter((name) => name.endsWith('.js'))) {
      // The streams of sheets and their codes are drawn under these names.
      expect(text(file), relative(folder, file)).not.toMatch(/sheet code|["'`]sheet["'`]|["'`]sitting["'`]|ledger/);
    }
  });
});
