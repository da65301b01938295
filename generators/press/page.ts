import type { Browser, HTTPRequest, Page } from 'puppeteer-core';
import { inTime } from './alive.ts';
import { PATIENCE } from './launch.ts';

/** How long a page may take to open, in ms. */
const OPENING = 30_000;

/** The document itself is at fault: another try would end the same way. */
export class BadDocument extends Error {
  override readonly name = 'BadDocument';
}

/** A page, which prints one document after another. */
interface Opened {
  page: Page;
  /** Fails when the process of the page dies. */
  crash: Promise<never>;
}

/** Pages that wait for their next document: to open another takes as long as to print a sheet. */
const waiting = new WeakMap<Browser, Opened[]>();

/**
 * One HTML document as a tagged PDF with an outline, on the paper that its `@page` names.
 * Scripts do not run. The title is that of the document unless another is given.
 * @throws BadDocument when it asks for anything outside itself, or a font of it cannot be read;
 *   any other error when the browser, or the part of it that held the page, dies
 */
export async function pdfOf(browser: Browser, html: string, title?: string): Promise<Uint8Array> {
  const opened = waitingAt(browser).pop() ?? (await open(browser));
  try {
    const pdf = await Promise.race([printed(opened.page, html, title), opened.crash]);
    waitingAt(browser).push(opened);
    return pdf;
  } catch (error) {
    await opened.page.close().catch(() => undefined); // dead with its browser, perhaps
    throw error;
  }
}

function waitingAt(browser: Browser): Opened[] {
  const pages = waiting.get(browser) ?? [];
  waiting.set(browser, pages);
  return pages;
}

async function open(browser: Browser): Promise<Opened> {
  // A page whose process dies while it opens never answers; elsewhere it takes a tenth of a second.
  const page = await inTime(browser.newPage(), OPENING, 'the browser opens no page');
  const crash = new Promise<never>((_, fail) => page.once('error', fail));
  crash.catch(() => waiting.set(browser, waitingAt(browser).filter((one) => one.page !== page)));
  await page.setJavaScriptEnabled(false);
  return { page, crash };
}

async function printed(page: Page, html: string, title: string | undefined): Promise<Uint8Array> {
  const outside: string[] = [];
  const note = (request: HTTPRequest) => {
    if (!/^(data|about):/.test(request.url())) outside.push(request.url());
  };
  // Nothing of the document before this one stays.
  await page.goto('about:blank', { timeout: PATIENCE });
  page.on('request', note);
  await page.setContent(unseen(html), { timeout: PATIENCE });
  page.off('request', note);
  if (outside.length > 0) throw new BadDocument(`a sheet carries everything inside itself, but this one asks for ${outside.join(', ')}`);
  await loadFonts(page);
  if (title !== undefined) await page.evaluate((given) => void (document.title = given), title);
  return page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true, timeout: PATIENCE });
}

/**
 * Nothing is shown on the screen, and so nothing is laid out for it: printing lays out anew.
 */
function unseen(html: string): string {
  return html.replace(/<head(\s[^>]*)?>/i, '$&<style>@media screen { body { display: none !important } }</style>');
}

/** All faces, since a document that is not shown asks for none. */
async function loadFonts(page: Page): Promise<void> {
  const unreadable = await page.evaluate(async () => {
    const faces = [...(document.fonts as unknown as Iterable<FontFace>)];
    const loads = await Promise.allSettled(faces.map((face) => face.load()));
    return faces.filter((_, i) => loads[i]!.status === 'rejected').map((face) => face.family);
  });
  if (unreadable.length > 0) throw new BadDocument(`fonts of this document cannot be read: ${unreadable.join(', ')}`);
}
