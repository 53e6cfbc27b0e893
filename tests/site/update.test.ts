import { readFileSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { serve } from '@hono/node-server';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import { openBrowser } from './browser.ts';
import { figure, send } from './talk.ts';

const tons = 'how many tons for 300 x 12 ft at 2 in';
let browser: Browser;
let context: BrowserContext;
let server: Server;
let address: string;
/** The server has a newer set of files than the one that phones keep. */
let newer = false;

beforeAll(async () => {
  const app = createApp({ ask });
  const fetch = async (request: Request): Promise<Response> => {
    if (!newer || new URL(request.url).pathname !== '/worker.js') return app.fetch(request);
    const response = await app.request('/worker.js');
    // Another version with the same files: only the worker's list tells them apart.
    const changed = (await response.text()).replace(/("version":"[^"]+)"/, '$1-newer"');
    const headers = { 'Content-Type': 'text/javascript; charset=utf-8', 'Cache-Control': 'no-cache' };
    return new Response(changed, { headers });
  };
  server = serve({ fetch, port: 0, hostname: '127.0.0.1' }) as Server;
  if (!server.listening) await new Promise((resolve) => server.once('listening', resolve));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  browser = await openBrowser();
});
beforeEach(async () => {
  newer = false;
  await context?.close();
  context = await browser.newContext({ viewport: { width: 390, height: 844 } });
});
afterAll(async () => {
  await context?.close();
  await browser?.close();
  server?.close();
});

async function visit(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  const kept = () => page.evaluate<boolean>('navigator.serviceWorker.controller !== null');
  await expect.poll(kept, { timeout: 20_000 }).toBe(true);
  return page;
}

test('newer rules are offered and wait; when they are taken, answers and ticks are still there', async () => {
  const page = await visit();
  await send(page, tons);
  await page.locator('.tick input').first().check();
  await page.waitForTimeout(500);
  const stays = await page.evaluate<number>('performance.timeOrigin');

  newer = true;
  await page.evaluate('navigator.serviceWorker.getRegistration().then((held) => held.update()).then(() => undefined)');
  await expect.poll(() => page.locator('#status').innerText(), { timeout: 20_000 }).toMatch(/New rules are ready/);
  // Not forced: the page was not loaded again, and goes on.
  expect(await page.evaluate('performance.timeOrigin')).toBe(stays);
  expect(await page.locator('.tick input').first().isChecked()).toBe(true);
  await send(page, 'what about 14 feet wide?');
  expect(await figure(page)).toBe('51.3 tons');
  await page.waitForTimeout(500);

  // The first window stays open meanwhile: once there is none, the newer rules are simply in use in the next one.
  const again = await context.newPage();
  await again.goto(address);
  await again.getByRole('button', { name: 'Use them now' }).click({ timeout: 20_000 });
  await expect
    .poll(() =>
      again.evaluate<string[]>('caches.keys()').then((names) => names.some((name) => name.endsWith('-newer'))),
    )
    .toBe(true);
  await expect.poll(() => again.locator('.entry').count(), { timeout: 20_000 }).toBe(2);
  expect(await figure(again)).toBe('51.3 tons');
  expect(await again.locator('.tick input').first().isChecked()).toBe(true);
});

test('where there is no room left, answers go on, it is said, and a copy can still be saved', async () => {
  await context.addInitScript(
    'IDBObjectStore.prototype.put = () => { throw new DOMException("no room", "QuotaExceededError"); }',
  );
  const page = await visit();
  await send(page, tons);
  expect(await figure(page)).toBe('44.0 tons');
  await expect.poll(() => page.locator('#phone').innerText()).toMatch(/no room left/);
  await send(page, 'what about 14 feet wide?');
  expect(await figure(page)).toBe('51.3 tons');
  const waiting = page.waitForEvent('download');
  await page.locator('#phone').getByRole('button', { name: 'Save a copy to a file' }).click();
  const file = await waiting;
  expect(file.suggestedFilename()).toMatch(/^bladehand-.*\.json$/);
  // Nothing is on the disk, and yet all of it is in the copy and on the sheet.
  const { kept } = JSON.parse(readFileSync(await file.path(), 'utf8'));
  expect(kept.flatMap(({ value }: { value: { turns?: unknown[] } }) => value.turns ?? [])).toHaveLength(2);
  await page.getByRole('button', { name: 'Job sheet to print' }).click();
  await page.locator('.jobsheet').waitFor();
  expect(await page.locator('.jobsheet').innerText()).toContain('51.3 tons');
});
