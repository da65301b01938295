import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { type BrowserFound, findBrowser } from '../../generators/press/browser.ts';
import { bundledBrowser } from '../../generators/press/bundled.ts';
import { describeUnless } from '../outside.ts';

/** The output of an outside program. */
export function run(program: string, ...args: string[]): string {
  return execFileSync(program, args, { encoding: 'utf8', maxBuffer: 1e8 });
}

/** The same tests with the installed and with the bundled browser. */
export async function describeWithEachBrowser(title: string, body: (found: BrowserFound) => void): Promise<void> {
  const kinds = { installed: await installedBrowser(), bundled: await bundledBrowser(process.env) };
  for (const [kind, found] of Object.entries(kinds)) {
    describeUnless(found ? [] : [`the ${kind} browser`], `${title}, ${kind} browser`, () => body(found!));
  }
}

function installedBrowser(): Promise<BrowserFound | undefined> {
  const { PUPPETEER_EXECUTABLE_PATH: _, ...env } = process.env;
  return findBrowser(env).then(
    (found) => (found.kind === 'installed' ? found : undefined),
    () => undefined,
  );
}

/** Where processes are looked at by way of /proc. */
export const PROC = existsSync('/proc/self/task');

/** Ids of all processes below one; read from Linux's /proc. */
export function processesBelow(id: number): number[] {
  const children = readProcess(id, `task/${id}/children`).split(' ').filter(Boolean).map(Number);
  return children.flatMap((child) => [child, ...processesBelow(child)]);
}

/** Whether a process is a browser itself, not one of its helpers. */
export function isBrowser(id: number): boolean {
  const command = commandOf(id);
  return command.includes('--remote-debugging-pipe') && !command.includes('--type=');
}

/** Whether a process holds a page of a browser. */
export function isRenderer(id: number): boolean {
  return commandOf(id).includes('--type=renderer');
}

export function commandOf(id: number): string {
  return readProcess(id, 'cmdline');
}

/** Empty when the process has just ended. */
function readProcess(id: number, file: string): string {
  try {
    return readFileSync(`/proc/${id}/${file}`, 'utf8');
  } catch {
    return '';
  }
}
