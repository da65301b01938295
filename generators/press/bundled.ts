import { execFile } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { mkdtemp, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import type { BrowserFound } from './browser.ts';
import type { Environment } from './places.ts';
import { privateFolder } from './private-folder.ts';

/**
 * The headless Chromium of the optional package @sparticuz/chromium, or undefined where
 * the package is missing or not made for this machine. At first use it is unpacked (200 MB)
 * into a private folder named by its version.
 */
export async function bundledBrowser(env: Environment): Promise<BrowserFound | undefined> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined;
  const main = packageMain();
  if (main === undefined) return undefined;
  const folder = join(await privateFolder(env), `chromium-${versionOf(main)}`);
  if (!existsSync(folder)) await unpack(main, folder, env);
  return { kind: 'bundled', executable: join(folder, 'chromium'), env: surroundings(folder, env) };
}

function packageMain(): string | undefined {
  try {
    return createRequire(import.meta.url).resolve('@sparticuz/chromium');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'MODULE_NOT_FOUND') return undefined;
    throw error;
  }
}

function versionOf(main: string): string {
  const description = readFileSync(join(dirname(main), '..', '..', 'package.json'), 'utf8');
  return (JSON.parse(description) as { version: string }).version;
}

/** Its shared libraries come before the system's; its fonts are added to the system's. */
function surroundings(folder: string, env: Environment): Record<string, string> {
  const libraries = [join(folder, 'al2023', 'lib'), env.LD_LIBRARY_PATH].filter(Boolean).join(':');
  return { LD_LIBRARY_PATH: libraries, FONTCONFIG_FILE: join(folder, 'fonts.conf') };
}

/**
 * The package unpacks into the temporary folder of its process, and its shared libraries only
 * when it believes itself on Amazon Linux 2023; both are settled by the environment at import,
 * hence a process of its own. Renaming at the end leaves no half-unpacked browser behind.
 */
async function unpack(main: string, folder: string, env: Environment): Promise<void> {
  const partial = await mkdtemp(`${folder}.partial-`);
  try {
    await promisify(execFile)(process.execPath, ['-e', 'require(process.argv[1]).executablePath()', main], {
      env: { ...env, TMPDIR: partial, AWS_LAMBDA_JS_RUNTIME: 'nodejs22.x' },
    });
    await writeFile(join(partial, 'fonts.conf'), FONTS);
    await rename(partial, folder);
  } catch (error) {
    const overtaken = existsSync(folder); // another process unpacked the same browser meanwhile
    if (!overtaken) throw new Error(`the bundled browser could not be unpacked into ${folder}`, { cause: error });
  } finally {
    await rm(partial, { recursive: true, force: true });
  }
}

/** The package's own configuration looks for fonts, and keeps its cache, in the shared temporary folder. */
const FONTS = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "urn:fontconfig:fonts.dtd">
<fontconfig>
  <include ignore_missing="yes">/etc/fonts/fonts.conf</include>
  <dir>/usr/share/fonts</dir>
  <dir>/usr/local/share/fonts</dir>
  <dir prefix="relative">fonts/fonts</dir>
  <cachedir prefix="xdg">fontconfig</cachedir>
</fontconfig>
`;
