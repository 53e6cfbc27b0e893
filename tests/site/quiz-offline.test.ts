import { readFileSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { serve } from '@hono/node-server';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { buildQuiz } from '../../src/ask/quiz/build.ts';
import { readCall } from '../../src/ask/quiz/desk/call.ts';
import { fileOf, formats } from '../../src/ask/quiz/export/file.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { createApp } from '../../src/server/app.ts';
import type { Store } from '../../src/server/store/store.ts';
import { rightAnswer } from '../quiz/sets.ts';
import { sqlitePlace } from '../store/engines.ts';
import { openBrowser } from './browser.ts';

let browser: Browser;
let server: Server | undefined;
let address: string;
let store: Store;
const place = sqlitePlace();
const complaints: string[] = [];

async function listen(port: number): Promise<Server> {
  const made = serve({
    fetch: createApp({ ask, store: async () => store }).fetch,
    port,
    hostname: '127.0.0.1',
  }) as Server;
  if (!made.listening) await new Promise((resolve) => made.once('listening', resolve));
  return made;
}

async function close(): Promise<void> {
  const closing = server;
  server = undefined;
  closing?.closeAllConnections();
  await new Promise((resolve) => (closing ? closing.close(resolve) : resolve(undefined)));
}

beforeAll(async () => {
  store = await place.open();
  server = await listen(0);
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await close();
  await store.close();
  await place.clear();
});

/** A page that the phone has kept: its worker is in charge. */
async function keptPage(): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  page.on('pageerror', (fault) => complaints.push(fault.message));
  await page.goto(`${address}/quiz`);
  await expect
    .poll(() => page.evaluate<boolean>('navigator.serviceWorker.controller !== null'), { timeout: 60_000 })
    .toBe(true);
  return page;
}

const builtFrom = (query: string) => {
  const built = buildQuiz(knowledge, readCall(new URLSearchParams(query)).request);
  if ('fault' in built) throw new Error(built.fault);
  return built.set;
};

test('with the server gone: a set is built, taken, saved, opened again, and practised', {
  timeout: 180_000,
}, async () => {
  const page = await keptPage();
  const { port } = server!.address() as AddressInfo;
  await close();
  await page.context().setOffline(true);

  const query = 'topic=mix&topic=hazards&level=easy&count=6&seed=road';
  await page.goto(`${address}/quiz?${query}`);
  await expect.poll(() => page.locator('.questions > li').count()).toBe(6);
  const set = builtFrom(query);

  for (const format of formats) {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.locator(`a[href*="format=${format}"]`).click(),
    ]);
    const expected = fileOf(set, format);
    expect(download.suggestedFilename()).toBe(expected.name);
    expect(Buffer.compare(readFileSync(await download.path()), Buffer.from(expected.content))).toBe(0);
    if (format !== 'json') continue;
    const saved = await download.path();
    await page.goto(`${address}/quiz`);
    await page.getByLabel(/^File that was saved here/).setInputFiles({
      name: 'set.json',
      mimeType: 'application/json',
      buffer: readFileSync(saved),
    });
    await page.getByRole('button', { name: 'Open it' }).click();
    expect(await page.locator('.notice').innerText()).toContain('No rule behind this key has changed');
    await page.goto(`${address}/quiz?${query}`);
    await page.locator('.questions > li').first().waitFor();
  }

  await page.goto(`${address}/quiz/take?${query}&feedback=each`);
  for (const [at, item] of set.items.entries()) {
    await page.locator('#question', { hasText: `Question ${at + 1} of 6` }).waitFor();
    const given = at === 0 ? [] : rightAnswer(item);
    for (const value of given)
      if (item.kind === 'number') await page.locator(`[name="answer-${item.id}"]`).fill(value);
      else await page.locator(`[name="answer-${item.id}"][value="${value}"]`).check();
    await page.getByRole('button', { name: 'Check this one' }).click();
    await page.locator(`.told .mark-${at === 0 ? 'open' : 'right'}`).waitFor();
    await page.locator('.send').click();
  }
  expect(await page.locator('#result').innerText()).toBe('5 of 6 right');

  await page.goto(`${address}/quiz/practice`);
  await page.getByRole('button', { name: 'Start' }).click();
  await page.getByRole('button', { name: 'Check this one' }).click();
  await page.locator('.told .mark-open').waitFor();
  // The phone's clock goes on a day: what was missed is back.
  await page.clock.setFixedTime(new Date(Date.now() + 86_400_000));
  await page.goto(`${address}/quiz/practice`);
  await expect.poll(() => page.locator('#practice').innerText()).toContain('1 to come back today');

  await page.context().setOffline(false);
  server = await listen(port);
  await page.context().close();
  expect(complaints).toEqual([]);
});

test('answers for a class wait on the phone until there is signal, and count once', { timeout: 120_000 }, async () => {
  const page = await keptPage();
  await page.goto(`${address}/quiz/class?topic=mix&kind=one&count=3&seed=class`);
  await page.getByRole('button', { name: 'Start the class' }).click();
  const crew = await page.locator('.address a').innerText();
  const trainer = page.url();
  await page.goto(crew);
  await page.getByLabel('Your initials').fill('AB');
  const { port } = server!.address() as AddressInfo;
  await close();
  await page.context().setOffline(true);
  await page.getByRole('button', { name: 'Mark my answers' }).click();
  await page.locator('.notice', { hasText: 'kept on this phone' }).waitFor();
  server = await listen(port);
  await page.context().setOffline(false);
  await page.locator('.notice', { hasText: 'were sent' }).waitFor();
  await page.goto(trainer);
  expect(await page.locator('h2', { hasText: 'result' }).innerText()).toBe('1 result');
  await page.context().close();
});
