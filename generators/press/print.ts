import type { Browser } from 'puppeteer-core';
import { UserMistake } from '../mistake.ts';
import { endOf, isGone, whileAlive } from './alive.ts';
import { type BrowserFound, findBrowser } from './browser.ts';
import { launch } from './launch.ts';
import { BadDocument, pdfOf } from './page.ts';
import { pageCount, settled } from './pdf.ts';
import type { Environment } from './places.ts';
import { turns } from './turns.ts';
import { writeWhole } from './write-whole.ts';

export interface PressOptions {
  /** Where to look for a browser; `process.env` by default. */
  env?: Environment;
  /** A browser already found; then there is no search. */
  found?: BrowserFound;
  /** How many documents are printed at once; 1 by default, and more than the machine has cores gains nothing. */
  workers?: number;
}

export interface Press {
  /** The browser that prints. */
  readonly found: BrowserFound;
  /**
   * Prints one self-contained HTML document (styles inside, fonts and pictures as `data:` URLs)
   * and writes the PDF; the file is there whole or not at all. The same document gives the same
   * bytes from the same browser. If the browser dies, a new one tries once more.
   * @throws BadDocument when the document is not self-contained; Error when the browser dies again
   */
  print(html: string, file: string, options?: { title?: string }): Promise<{ pages: number }>;
  /** Ends the browser; printing after that fails. */
  close(): Promise<void>;
}

/**
 * Starts a browser to print with; close it at the end.
 * @throws UserMistake when there is no browser or it does not start
 */
export async function openPress({ env = process.env, found, workers = 1 }: PressOptions = {}): Promise<Press> {
  const chosen = found ?? (await findBrowser(env));
  const browsers = succession(() => launch(chosen));
  await browsers.current();
  const turn = turns(workers);

  return {
    found: chosen,
    async print(html, file, { title } = {}) {
      const pdf = await turn(() => twice(browsers.current, (browser) => whileAlive(browser, pdfOf(browser, html, title)), file));
      await writeWhole(file, settled(pdf));
      return { pages: pageCount(pdf) };
    },
    close: browsers.end,
  };
}

/** A second try when the browser dies in the first: it may have been the machine's memory, or someone's hand. */
async function twice<T>(browser: () => Promise<Browser>, work: (browser: Browser) => Promise<T>, file: string): Promise<T> {
  const first = await browser();
  try {
    return await work(first);
  } catch (error) {
    if (error instanceof BadDocument) throw error;
  }
  const second = await browser();
  return work(second).catch((cause) => {
    if (cause instanceof BadDocument) throw cause;
    throw new UserMistake(`the browser failed twice while printing ${file}; is there enough memory? Close other programs, and run the command again`, { cause });
  });
}

/** One browser at a time: the next is started when the last is gone, and by one caller only. */
function succession(begin: () => Promise<Browser>) {
  let latest: Promise<Browser> | undefined;
  let ended = false;
  return {
    async current(): Promise<Browser> {
      if (ended) throw new Error('the press is closed');
      const seen = (latest ??= begin());
      const browser = await seen;
      if (!isGone(browser)) return browser;
      if (latest === seen) latest = begin();
      return latest;
    },
    async end(): Promise<void> {
      ended = true;
      const last = await latest;
      if (last) await endOf(last);
    },
  };
}
