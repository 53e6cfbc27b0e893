import { execFile } from 'node:child_process';
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import type { LaunchOptions } from 'playwright-core';

/**
 * The package takes whatever program it finds in the temporary folder, of any version: so it gets a folder of its own,
 * named for its version.
 */
const folder = join(dirname(fileURLToPath(import.meta.url)), '../../node_modules/.cache/chromium-147');

/** Its own list of fonts names folders of another machine. */
const fontList = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir prefix="relative">fonts</dir>
  <cachedir prefix="xdg">fontconfig</cachedir>
</fontconfig>
`;

const unpackScript = `
  const { default: browser } = await import('@sparticuz/chromium');
  await browser.executablePath();
`;

/**
 * The Chromium that comes with the packages, with the libraries and the font it needs on a bare machine. Unpacked on first
 * use and put in place whole, so that two runs at once do no harm.
 */
export async function packedBrowser(): Promise<LaunchOptions> {
  if (!existsSync(folder)) await unpack();
  return {
    executablePath: join(folder, 'chromium'),
    // For the browser alone: other programs that a test starts must not load these libraries.
    env: {
      ...process.env,
      LD_LIBRARY_PATH: join(folder, 'al2023/lib'),
      FONTCONFIG_PATH: join(folder, 'fonts'),
      XDG_CACHE_HOME: join(folder, 'cache'),
    },
  };
}

async function unpack(): Promise<void> {
  const fresh = `${folder}.${process.pid}`;
  mkdirSync(fresh, { recursive: true });
  try {
    // Read when the package is loaded; the second one makes it bring its libraries along.
    const env = { ...process.env, TMPDIR: fresh, AWS_LAMBDA_JS_RUNTIME: 'nodejs20.x' };
    await promisify(execFile)(process.execPath, ['--input-type=module', '--eval', unpackScript], {
      env,
      cwd: dirname(fileURLToPath(import.meta.url)),
    });
    writeFileSync(join(fresh, 'fonts/fonts.conf'), fontList);
    renameSync(fresh, folder);
  } catch (fault) {
    if (!existsSync(folder)) throw fault;
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
}
