import { delimiter, posix, win32 } from 'node:path';

/** Environment variables, as in `process.env`. */
export type Environment = Readonly<Record<string, string | undefined>>;

/** Commands under which Linux distributions install a browser. */
const COMMANDS = [
  'google-chrome-stable',
  'google-chrome',
  'chromium',
  'chromium-browser',
  'microsoft-edge-stable',
  'microsoft-edge',
];

const MAC_APPS = ['Google Chrome', 'Chromium', 'Microsoft Edge'];

const WINDOWS_APPS = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Chromium\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
];

/**
 * Where Chrome, Chromium or Edge is usually installed, the first choice first.
 * The places are those of the three browsers' own installers and packages (common practice, no source).
 */
export function usualPlaces(env: Environment, platform: NodeJS.Platform): string[] {
  if (platform === 'win32') return onWindows(env);
  if (platform === 'darwin') return onMac(env);
  return onLinux(env);
}

function onLinux(env: Environment): string[] {
  const folders = (env.PATH ?? '').split(delimiter).filter(posix.isAbsolute);
  const packaged = ['/opt/google/chrome/chrome', '/opt/microsoft/msedge/msedge', '/snap/bin/chromium'];
  return [...COMMANDS.flatMap((command) => folders.map((folder) => posix.join(folder, command))), ...packaged];
}

function onMac(env: Environment): string[] {
  const folders = ['/Applications', ...(env.HOME ? [posix.join(env.HOME, 'Applications')] : [])];
  return MAC_APPS.flatMap((app) => folders.map((folder) => posix.join(folder, `${app}.app`, 'Contents/MacOS', app)));
}

function onWindows(env: Environment): string[] {
  const folders = ['ProgramFiles', 'ProgramFiles(x86)', 'LOCALAPPDATA'].flatMap((name) => env[name] ?? []);
  return WINDOWS_APPS.flatMap((app) => folders.map((folder) => win32.join(folder, app)));
}
