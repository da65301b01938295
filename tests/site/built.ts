import { createReadStream, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { type Server, createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, type Page, launch } from 'puppeteer-core';
import { type SiteContents, buildSite } from '../../generators/cli/site/build-site.ts';
import { experiments } from '../../generators/experiments/index.ts';
import { findBrowser } from '../../generators/press/browser.ts';

/** A built site in a folder and on a server, and a browser to look at it. */
export interface Built {
  folder: string;
  browser: Browser;
  /** Addresses of a page of the site: from the folder, and from a server, below a path. */
  file(page: string): string;
  http(page: string): string;
  /** Takes the server off the net, or back to it: what a browser asks meanwhile fails, a worker of the page too, which is out of reach of the page's own offline mode. */
  connect(isThere: boolean): void;
  close(): Promise<void>;
}

const TYPES: Readonly<Record<string, string>> = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css', '.woff2': 'font/woff2', '.svg': 'image/svg+xml' };
/** The site need not stand at the root of its server. */
const BELOW = '/school/bridge';

/** A site with the pages of some experiments. */
export const builtSite = (...ids: string[]): Promise<Built> => builtOf({ experiments: ids.map((id) => experiments[id]!), myReadings: true });

/** The site with everything that it has. */
export const wholeSite = (): Promise<Built> => builtOf();

export async function builtOf(contents?: SiteContents): Promise<Built> {
  const folder = mkdtempSync(join(tmpdir(), 'slidewire-site-'));
  await buildSite(folder, 'en', contents);
  const net = { isThere: true };
  const server = await serve(folder, net);
  const browser = await withNetwork();
  return {
    folder,
    browser,
    file: (page) => pathToFileURL(join(folder, page.split('#')[0]!)).href + (page.includes('#') ? `#${page.split('#')[1]}` : ''),
    http: (page) => `http://localhost:${(server.address() as AddressInfo).port}${BELOW}/${page}`,
    connect(isThere) {
      net.isThere = isThere;
      if (!isThere) server.closeAllConnections();
    },
    async close() {
      await browser.close();
      await new Promise((done) => {
        server.close(done);
        server.closeAllConnections();
      });
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** The press lets its browser reach no network; here it has to reach the server of the test. */
async function withNetwork(): Promise<Browser> {
  const { executable, env, kind } = await findBrowser();
  return launch({ executablePath: executable, headless: kind === 'bundled' ? 'shell' : true, env: { ...process.env, ...env }, args: ['--no-proxy-server', ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])] });
}

function serve(folder: string, net: { isThere: boolean }): Promise<Server> {
  const server = createServer(({ url = '', socket }, response) => {
    if (!net.isThere) return void socket.destroy();
    const path = join(folder, decodeURIComponent(new URL(url, 'http://any').pathname).replace(BELOW, ''));
    if (!existsSync(path) || !extname(path)) return void response.writeHead(404).end();
    response.writeHead(200, { 'content-type': TYPES[extname(path)] ?? 'application/octet-stream' });
    createReadStream(path).pipe(response);
  });
  return new Promise((done) => server.listen(0, 'localhost', () => done(server)));
}

/** A page in a context of its own, so that nothing is kept from another; what it complains of and asks for is collected. */
export async function openPage(built: Built, address: string, manner: { script?: boolean; width?: number } = {}): Promise<Page & { complaints: string[]; asked: string[] }> {
  const context = await built.browser.createBrowserContext();
  const page = Object.assign(await context.newPage(), { complaints: [] as string[], asked: [] as string[] });
  page.on('console', (message) => void page.complaints.push(message.text()));
  page.on('pageerror', (error) => void page.complaints.push(String(error)));
  page.on('request', (request) => void page.asked.push(request.url()));
  page.on('requestfailed', (request) => void page.complaints.push(`${request.url()} failed`));
  await page.setViewport({ width: manner.width ?? 1000, height: 900 });
  if (manner.script === false) await page.setJavaScriptEnabled(false);
  await page.goto(address);
  return page;
}

/** Waits until the worker keeps what stands at an address. */
export async function keptOffline(page: Page, ...addresses: string[]): Promise<void> {
  for (const address of addresses) await page.waitForFunction(async (wanted) => (await caches.match(wanted)) !== undefined, {}, address);
}
