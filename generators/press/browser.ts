import { accessSync, constants, statSync } from 'node:fs';
import { UserMistake } from '../mistake.ts';
import { bundledBrowser } from './bundled.ts';
import { type Environment, usualPlaces } from './places.ts';

/** A browser that can print, and what it needs to be started with. */
export interface BrowserFound {
  /** `named` by PUPPETEER_EXECUTABLE_PATH, `installed` on this machine, or `bundled` with Slidewire. */
  kind: 'named' | 'installed' | 'bundled';
  /** The absolute path of the program. */
  executable: string;
  /** Environment variables to be set for it, over the usual ones. */
  env: Record<string, string>;
}

/** What differs from machine to machine; given by tests. */
export interface Machine {
  platform: NodeJS.Platform;
  runnable(file: string): boolean;
  bundled(env: Environment): Promise<BrowserFound | undefined>;
}

const THIS_MACHINE: Machine = { platform: process.platform, runnable: isRunnable, bundled: bundledBrowser };

const NAMED = 'PUPPETEER_EXECUTABLE_PATH';

/**
 * The browser to print with: the one that PUPPETEER_EXECUTABLE_PATH names, else an installed
 * Chrome, Chromium or Edge, else the bundled one (Linux x64 only), unpacked at first use.
 * @throws UserMistake when the variable names no program, or when there is no browser at all
 */
export async function findBrowser(env: Environment = process.env, machine = THIS_MACHINE): Promise<BrowserFound> {
  const named = env[NAMED];
  if (named !== undefined && named !== '') {
    if (machine.runnable(named)) return { kind: 'named', executable: named, env: {} };
    throw new UserMistake(`${NAMED} is ${named}, which is not a program; correct it, or unset it`);
  }
  const installed = usualPlaces(env, machine.platform).find(machine.runnable);
  if (installed !== undefined) return { kind: 'installed', executable: installed, env: {} };
  const bundled = await machine.bundled(env);
  if (bundled !== undefined) return bundled;
  throw new UserMistake(`no browser to print with. ${howToInstall(machine.platform)}`);
}

function howToInstall(platform: NodeJS.Platform): string {
  const first =
    platform === 'linux'
      ? 'On Debian or Ubuntu run: sudo apt install chromium'
      : 'Install Google Chrome (https://www.google.com/chrome/) or Microsoft Edge';
  return `${first}. Or run: npx @puppeteer/browsers install chrome, and set ${NAMED} to the path that it prints`;
}

function isRunnable(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}
