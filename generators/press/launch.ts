import { type Browser, launch as start } from 'puppeteer-core';
import { UserMistake } from '../mistake.ts';
import { inTime } from './alive.ts';
import type { BrowserFound } from './browser.ts';

/** How long one command to the browser may take, in ms: a hundred sheets on a slow machine need a minute. */
export const PATIENCE = 300_000;

/** All traffic goes to a proxy that cannot exist, even traffic to this machine (RFC 2606 keeps .invalid free). */
const NO_NETWORK = [
  '--proxy-server=slidewire.invalid:1',
  '--proxy-bypass-list=<-loopback>',
  '--host-resolver-rules=MAP * ~NOTFOUND',
];

/** Letters keep their designed widths, so that lines break alike on every machine. */
const SAME_LETTERS = '--font-render-hinting=none';

/** A browser starts within a second or two, on a machine with much else to do within ten. */
const STARTING = 30_000;

/** What fills a browser's window with suggestions is half of the work of its start. */
const NO_SUGGESTIONS = '--disable-features=WebUIOmniboxPopup,WebUIOmniboxAimPopup';

/** Stands as Creator in the PDF, in place of the machine's own details. */
const CREATOR = '--user-agent=Slidewire';

/**
 * Starts a browser without a window, without network, spoken to through a pipe.
 *
 * The sandbox is on where it works. Root has none (Chrome refuses); elsewhere, where the browser
 * does not start, it is tried once without: many systems forbid what the sandbox needs. What is
 * printed is Slidewire's own HTML, with scripts and network off.
 * @throws UserMistake when it does not start either way
 */
export async function launch(found: BrowserFound, { root = process.getuid?.() === 0 } = {}): Promise<Browser> {
  const bare = () => launchWith(found, ['--no-sandbox']);
  // A second start also serves where the first was killed before it had begun.
  return (root ? bare() : launchWith(found, [])).catch(bare).catch((cause) => doesNotStart(found, cause));
}

function launchWith(found: BrowserFound, sandbox: string[]): Promise<Browser> {
  const started = start({
    executablePath: found.executable,
    headless: found.kind === 'bundled' ? 'shell' : true,
    env: { ...process.env, ...found.env },
    pipe: true,
    protocolTimeout: PATIENCE,
    args: [...sandbox, ...NO_NETWORK, SAME_LETTERS, NO_SUGGESTIONS, CREATOR],
  });
  // One that is killed while it starts may never answer.
  return inTime(started, STARTING, 'it does not answer');
}

function doesNotStart({ executable }: BrowserFound, cause: unknown): never {
  const why = cause instanceof Error ? cause.message : String(cause);
  throw new UserMistake(
    `the browser ${executable} does not start (${why}); update it, or set PUPPETEER_EXECUTABLE_PATH to another Chrome, Chromium or Edge`,
    { cause },
  );
}
