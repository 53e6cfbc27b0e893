import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { serve } from '@hono/node-server';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import { openBrowser } from './browser.ts';
import { figure, send } from './talk.ts';

const tons = 'how many tons for 300 x 12 ft at 2 in';
let browser: Browser;
let context: BrowserContext;
let server: Server;
let address: string;

async function listen(port: number): Promise<void> {
  server = serve({ fetch: createApp({ ask }).fetch, port, hostname: '127.0.0.1' }) as Server;
  if (!server.listening) await new Promise((resolve) => server.once('listening', resolve));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
}

function shut(): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}

beforeAll(async () => {
  browser = await openBrowser();
});
beforeEach(async () => {
  await context?.close();
  if (!server?.listening) await listen(0);
  context = await browser.newContext({ viewport: { width: 390, height: 844 } });
});
afterAll(async () => {
  await context?.close();
  await browser?.close();
  if (server?.listening) await shut();
});

/** Opens the page and waits until the phone has all of it. */
async function visit(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  const kept = () => page.evaluate<boolean>('navigator.serviceWorker.controller !== null');
  await expect.poll(kept, { timeout: 20_000 }).toBe(true);
  return page;
}

/** What a crew does on a road without signal: no server, a phone that was put away. */
async function goDark(page: Page): Promise<Page> {
  await page.close();
  await shut();
  await context.setOffline(true);
  return context.newPage();
}

describe('after one visit, with no network and no server', () => {
  test('a cold start answers, follows up, tells a card and an emergency, makes a quiz', async () => {
    const page = await goDark(await visit());
    await page.goto(address);
    await send(page, tons);
    // 400 sq yd x 2 in x 110 lb/sq yd/in / 2,000 = 44.0 tons.
    expect(await figure(page)).toBe('44.0 tons');
    await send(page, 'what about 14 feet wide?');
    expect(await figure(page)).toBe('51.3 tons');
    await send(page, 'what is a windrow');
    expect(await page.locator('.entry').last().getAttribute('class')).toContain('card');
    await send(page, 'my buddy got burned with hot asphalt');
    expect(await page.locator('.entry').last().innerText()).toMatch(/911/);
    await send(page, 'five question quiz on rolling');
    expect(await page.locator('.entry').last().locator('.quiz > ol > li').count()).toBe(5);
    expect(await page.locator('#phone').innerText()).toMatch(/^No signal\./);
  });

  test('what was asked and ticked is there again, and the pages to look up too', async () => {
    const first = await visit();
    await send(first, tons);
    await first.locator('.tick input').first().check();
    await first.waitForTimeout(500);
    const page = await goDark(first);
    await page.goto(address);
    await page.locator('.entry').first().waitFor();
    expect(await figure(page)).toBe('44.0 tons');
    expect(await page.locator('.tick input').first().isChecked()).toBe(true);
    for (const [path, heading] of [
      ['/rules/limit/lift-max', 'Thickest lift'],
      ['/cards', 'Cards'],
      ['/cards/term-windrow', 'Windrow'],
      ['/words', 'Words'],
      ['/quiz', 'Trainer'],
      ['/sheet', 'Job sheet'],
    ] as const) {
      await page.goto(address + path);
      await page.locator('h1').waitFor();
      expect((await page.locator('h1').innerText()).toLowerCase(), path).toContain(heading.toLowerCase());
    }
    expect(await page.locator('.figures').innerText()).toContain('44.0 tons');
  });
});

describe('faults', () => {
  test('a file that is not what the list says is refused, and the page goes on with the server', async () => {
    await context.route('**/assets/*.js', async (route) => {
      const response = await route.fetch();
      const odd = route.request().serviceWorker() ? '\n// another version' : '';
      await route.fulfill({ response, body: (await response.text()) + odd });
    });
    const page = await context.newPage();
    await page.goto(address);
    await send(page, tons);
    expect(await figure(page)).toBe('44.0 tons');
    // The worker may still be fetching when the page is closed.
    await context.unrouteAll({ behavior: 'ignoreErrors' });
  });

  test('where the browser keeps nothing, answers go on and it is said', async () => {
    await context.addInitScript(
      'Object.defineProperty(window, "indexedDB", { get() { throw new Error("private"); } })',
    );
    const page = await context.newPage();
    await page.goto(address);
    await send(page, tons);
    expect(await figure(page)).toBe('44.0 tons');
    await expect.poll(() => page.locator('#phone').innerText()).toMatch(/keeps nothing/);
  });

  test('a clock that is wrong is said, and nothing else changes', async () => {
    await context.addInitScript('Date.now = () => 0');
    const page = await context.newPage();
    await page.goto(address);
    await send(page, tons);
    expect(await figure(page)).toBe('44.0 tons');
    await expect.poll(() => page.locator('#phone').innerText()).toMatch(/clock of this phone/);
  });

  test('two windows on one job: each goes on, neither is lost', async () => {
    const one = await visit();
    await send(one, tons);
    await one.waitForTimeout(400);
    const two = await context.newPage();
    await two.goto(address);
    await two.locator('.entry').first().waitFor();
    await send(two, 'make it 3 inches');
    await two.waitForTimeout(400);
    await send(one, 'what about 14 feet wide?');
    await expect.poll(() => one.locator('#status').innerText()).toMatch(/Another window/);
    expect([await figure(one), await figure(two)]).toEqual(['51.3 tons', '66.0 tons']);
  });
});

test('a copy is saved and taken in again; a file that is none is refused in plain words', async () => {
  const page = await visit();
  await send(page, tons);
  await page.waitForTimeout(400);
  await page.goto(`${address}/sheet`);
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a copy to a file' }).click();
  const path = await (await waiting).path();
  await page.getByRole('button', { name: 'Clear everything' }).click();
  await page.getByRole('button', { name: 'Yes, clear' }).click();
  await expect.poll(() => page.locator('#status').innerText()).toMatch(/is gone/);
  await page.locator('input[type=file]').setInputFiles(path);
  await expect.poll(() => page.locator('#status').innerText()).toMatch(/Took in 1 record/);
  for (const [text, said] of [
    ['not json', /cannot be read/],
    ['{"is":"something else"}', /not one that Bladehand saved/],
    ['{"is":"bladehand kept","v":2,"kept":[]}', /newer Bladehand/],
    ['{"is":"bladehand kept","v":1,"kept":[{"kind":"talk","id":"x","value":{}}]}', /damaged and left out/],
  ] as const) {
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'odd.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await expect.poll(() => page.locator('#status').innerText()).toMatch(said);
  }
});
