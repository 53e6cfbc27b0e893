import { mkdirSync, writeFileSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { serve } from '@hono/node-server';
import type { Browser, Page } from 'playwright-core';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import { openBrowser } from '../../tests/site/browser.ts';
import { states } from './states.ts';

const widths = [390, 1280] as const;
const lights = [
  ['day', 'light'],
  ['night', 'dark'],
] as const;

/** Takes a picture of every state, or of those named, by day and night, on a phone and a desk. Gives how many there are. */
export async function shots(folder: string, names: readonly string[]): Promise<number> {
  const unknown = names.filter((name) => !states.some((state) => state.name === name));
  if (unknown.length > 0)
    throw new Error(
      `There is no state called ${unknown.join(', ')}. There are: ${states.map(({ name }) => name).join(', ')}.`,
    );
  const server = serve({ fetch: createApp({ ask }).fetch, port: 0, hostname: '127.0.0.1' }) as Server;
  if (!server.listening) await new Promise((resolve) => server.once('listening', resolve));
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const browser = await openBrowser();
  mkdirSync(folder, { recursive: true });
  let taken = 0;
  try {
    for (const width of widths)
      for (const [light, colorScheme] of lights)
        for (const { name, show } of states.filter((state) => names.length === 0 || names.includes(state.name))) {
          const file = join(folder, `${name}-${width}-${light}.png`);
          writeFileSync(file, await picture(browser, { width, colorScheme, show, address }));
          taken += 1;
        }
  } finally {
    await browser.close();
    server.close();
  }
  return taken;
}

interface View {
  readonly width: (typeof widths)[number];
  readonly colorScheme: 'light' | 'dark';
  readonly address: string;
  readonly show: (page: Page, address: string) => Promise<void>;
}

/** The whole length of the page, in a window of its own that remembers nothing. */
async function picture(browser: Browser, { width, colorScheme, show, address }: View): Promise<Buffer> {
  const viewport = { width, height: width < 500 ? 844 : 900 };
  const context = await browser.newContext({ viewport, colorScheme, bypassCSP: true });
  try {
    const page = await context.newPage();
    await show(page, address);
    // At its foot, instead of over the answer in the middle of a long picture.
    await page.addStyleTag({ content: '.composer { position: static !important }' });
    return await page.screenshot({ fullPage: true });
  } finally {
    await context.close();
  }
}
