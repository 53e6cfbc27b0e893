import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { serve } from '@hono/node-server';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import { openBrowser } from './browser.ts';

const phone = { width: 390, height: 844 };
const tons = 'how many tons for 300 x 12 ft at 2 in';
/** 300 x 12 ft is 400 sq yd; at 2 in and 110 lb for each square yard and inch that is 88,000 lb (NAVEDTRA 14080, p. 8-31). */
const tonsFound = /44\.0\s*tons/;

let browser: Browser;
let server: Server;
let context: BrowserContext;
let address: string;

beforeAll(async () => {
  browser = await openBrowser();
});
beforeEach(async () => {
  server = serve({ fetch: createApp({ ask }).fetch, port: 0, hostname: '127.0.0.1' }) as Server;
  if (!server.listening) await new Promise((resolve) => server.once('listening', resolve));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  context = await browser.newContext({ viewport: phone });
});
afterEach(async () => {
  await context.close();
  await hangUp();
});
afterAll(() => browser?.close());

/** Closes the server: no answer can come from it any more. */
async function hangUp(): Promise<void> {
  if (!server.listening) return;
  server.closeAllConnections();
  await new Promise((resolve) => server.close(resolve));
}

/** Opens the page and waits until the browser keeps all of it. */
async function visit(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
  await page.waitForFunction('navigator.serviceWorker.controller !== null');
  return page;
}

async function send(page: Page, question: string): Promise<string> {
  const before = await page.locator('.entry').count();
  await page.getByLabel('Your question').fill(question);
  await page.getByLabel('Your question').press('Enter');
  const entry = page.locator('.entry').nth(before);
  await entry.waitFor();
  return entry.innerText();
}

describe('with no signal', () => {
  test('after one visit the page starts cold and answers, follows up and tells a card', async () => {
    await (await visit()).close();
    await hangUp();
    await context.setOffline(true);
    const page = await context.newPage();
    await page.goto(address);
    expect(await send(page, tons)).toMatch(tonsFound);
    expect(await send(page, 'what about 3 in')).toMatch(/66\.0\s*tons/);
    expect(await send(page, 'grader quit, row in the lane')).toMatch(/The lane stays closed/);
  });

  test('what was asked on the road is there when the page is opened again', async () => {
    const page = await visit();
    await send(page, tons);
    await hangUp();
    await context.setOffline(true);
    const again = await context.newPage();
    await again.goto(address);
    await again.locator('.entry').first().waitFor();
    expect(await again.locator('.entry').first().innerText()).toMatch(tonsFound);
    await page.close();
  });

  test('an address that is not kept says so in words, and the way back works', async () => {
    await (await visit()).close();
    await hangUp();
    await context.setOffline(true);
    const page = await context.newPage();
    await page.goto(`${address}job/of-another-crew`);
    await expect.poll(() => page.locator('main').innerText()).toMatch(/signal|not here|not kept/i);
  });
});

describe('with signal', () => {
  test('the answer of the phone is the answer of the server, word for word', async () => {
    const page = await visit();
    await page.waitForLoadState('networkidle');
    const own = await send(page, tons);
    const plain = await browser.newContext({ viewport: phone, javaScriptEnabled: false });
    const form = await plain.newPage();
    await form.goto(address);
    await form.getByLabel('Your question').fill(tons);
    await form.getByRole('button', { name: 'Send' }).last().click();
    await form.locator('.entry').first().waitFor();
    const sent = await form.locator('.entry').first().innerText();
    await plain.close();
    expect(own).toBe(sent);
  });

  test('pages of the server stay its own once the worker is at work', async () => {
    const page = await visit();
    await page.goto(`${address}quiz`);
    expect(await page.getByRole('heading').first().innerText()).not.toMatch(/not here/i);
  });
});
