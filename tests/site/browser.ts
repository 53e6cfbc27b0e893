import { existsSync } from 'node:fs';
import { type Browser, chromium, type LaunchOptions } from 'playwright-core';
import { packedBrowser } from './packed-browser.ts';

/**
 * Not the arguments that come with the packed browser: those hold it to one process, and a second browser context then
 * ends it.
 */
const args = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A running headless browser; the caller closes it. Throws an Error that says what to do when there is none. */
export async function openBrowser(): Promise<Browser> {
  const where = await findBrowser();
  try {
    return await chromium.launch({ ...where, args });
  } catch (cause) {
    throw new Error(
      'The browser did not start, so the pages cannot be tested. Set CHROMIUM_PATH to a Chromium or Chrome program, ' +
        `or install Chrome or Chromium.\n${(cause as Error).message}`,
      { cause },
    );
  }
}

/**
 * How to start the browser at hand, in this order: the one that CHROMIUM_PATH names, an installed Chromium, the one that
 * comes with the packages (unpacked on first use), an installed Chrome.
 */
export async function findBrowser(): Promise<LaunchOptions> {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (!existsSync(named)) throw new Error(`CHROMIUM_PATH names ${named}, which is not there.`);
    return { executablePath: named };
  }
  if (existsSync('/usr/bin/chromium')) return { executablePath: '/usr/bin/chromium' };
  if (process.platform === 'linux' && process.arch === 'x64') return packedBrowser();
  return { channel: 'chrome' };
}
