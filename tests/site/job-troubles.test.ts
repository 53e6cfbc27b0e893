import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Cell, Change } from '../../src/ask/book/change.ts';
import { createApp } from '../../src/server/app.ts';
import { addKey, changesOf, openJob, startJob } from '../../src/server/job/job.ts';
import type { Store } from '../../src/server/store/store.ts';
import { sqlitePlace } from '../store/engines.ts';
import { served } from './served.ts';

let store: Store;
/** Keys of one job: the office's and the crew's. */
let office: string;
let crew: string;
const place = sqlitePlace();
const now = '2026-05-04T12:00:00.000Z';

beforeAll(async () => {
  store = await place.open();
});
afterAll(async () => {
  await store.close();
  await place.clear();
});
const site = served(createApp({ ask, store: async () => store }).fetch);

beforeEach(async () => {
  const change = (id: number, line: string, set: Record<string, Cell>): Change => ({
    id: `0mabcdefg.000${id}.phone1`,
    line,
    set,
  });
  office = await startJob(
    store,
    [
      change(1, 'job', { name: 'Spring list', road: 'CR 9' }),
      change(2, 'patch/a', {
        label: '1',
        'patch-length': { number: 300, unit: 'ft' },
        'patch-width': { number: 12, unit: 'ft' },
        'patch-depth': { number: 2, unit: 'in' },
      }),
    ],
    now,
  );
  const opened = await openJob(store, office);
  if (!opened || opened === 'revoked') throw new Error('the job did not open');
  crew = await addKey(store, opened.log, 'record', now);
});

/** What the page shows as laid. */
const down = (page: Page, tons: string) =>
  expect.poll(() => page.locator('.patches').textContent(), { timeout: 20_000 }).toContain(`down ${tons} tons`);
/** Tells the page that there is signal again, and does not wait for the browser to. */
const comesBack = (page: Page) => page.evaluate('dispatchEvent(new Event("online"))');
const phone = (): Promise<BrowserContext> => site.browser.newContext({ viewport: { width: 390, height: 844 } });
const synced = (page: Page) =>
  expect.poll(() => page.locator('#sync').textContent(), { timeout: 20_000 }).toContain('on the server');
async function opened(context: BrowserContext, key: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${site.address}/job/${key}`);
  await synced(page);
  return page;
}
/** Says something in the box of the job's page. */
async function say(page: Page, text: string): Promise<void> {
  const fold = page.locator('details', { has: page.locator('input[name=do][value=tell]') });
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').click();
  await fold.locator('textarea').fill(text);
  await fold.getByRole('button', { name: 'Say it' }).click();
}
const linesOnServer = async (key: string): Promise<string[]> => {
  const job = await openJob(store, key);
  return job && job !== 'revoked' ? (await changesOf(store, job.log)).map(({ line }) => line) : [];
};

test('a link that is taken back while something waits: it is said, nothing more is sent, and what was written stays', {
  timeout: 60_000,
}, async () => {
  const context = await phone();
  const page = await opened(context, crew);
  await context.setOffline(true);
  await say(page, 'we laid 42 tons on patch 1');
  await expect.poll(() => page.locator('#sync').textContent()).toContain('1 change waits');
  const job = await openJob(store, crew);
  if (!job || job === 'revoked') throw new Error('the job did not open');
  await store.revoke(job.log, job.link, now);
  await context.setOffline(false);
  await comesBack(page);
  await expect.poll(() => page.locator('#sync').textContent(), { timeout: 20_000 }).toContain('This link was revoked');
  expect(await page.locator('.patches').textContent()).toContain('down 42.0 tons');
  expect((await linesOnServer(office)).filter((line) => line.startsWith('load/'))).toEqual([]);
  // Nothing more can be written by it, and that is said.
  await page.goto(site.address);
  await expect.poll(() => page.locator('#on-job').textContent()).toContain('Spring list');
  await page.locator('#question').fill('we laid 3 tons on patch 1');
  await page.locator('.composer .send').click();
  await expect.poll(() => page.locator('.entry').last().textContent()).toContain('Nothing was written');
  await context.close();
});

test('two windows of one phone on one job: both write, each shows what the other wrote, nothing is doubled', {
  timeout: 60_000,
}, async () => {
  const context = await phone();
  const one = await opened(context, crew);
  const other = await opened(context, crew);
  await context.setOffline(true);
  await say(one, 'we laid 20 tons on patch 1');
  await down(one, '20.0');
  await say(other, 'we laid 10 tons on patch 1');
  await down(other, '30.0');
  await context.setOffline(false);
  for (const page of [one, other]) {
    await comesBack(page);
    await synced(page);
    await down(page, '30.0');
  }
  expect((await linesOnServer(office)).filter((line) => line.startsWith('load/'))).toHaveLength(2);
  await context.close();
});

test('a phone without room: what is written is said not to be kept, and still reaches the server', {
  timeout: 60_000,
}, async () => {
  const context = await phone();
  const page = await opened(context, crew);
  await page.evaluate(
    'IDBObjectStore.prototype.put = () => { throw new DOMException("no room", "QuotaExceededError"); }',
  );
  await context.setOffline(true);
  await say(page, 'we laid 42 tons on patch 1');
  await down(page, '42.0');
  await expect.poll(() => page.locator('#sync').textContent()).toContain('no room left');
  await context.setOffline(false);
  await comesBack(page);
  await expect
    .poll(async () => (await linesOnServer(office)).filter((line) => line.startsWith('load/')).length, {
      timeout: 20_000,
    })
    .toBe(1);
  await context.close();
});

test('what is said without signal, where one asks, waits and is sent later', { timeout: 60_000 }, async () => {
  const context = await phone();
  const page = await opened(context, crew);
  await page.goto(site.address);
  await expect.poll(() => page.locator('#on-job').textContent()).toContain('On the job Spring list');
  await context.setOffline(true);
  await page.locator('#question').fill('we laid 42 tons on patch 1');
  await page.locator('.composer .send').click();
  await expect.poll(() => page.locator('.entry').last().textContent()).toContain('42.0 tons down in all');
  await expect.poll(() => page.locator('#on-job').textContent()).toContain('1 change waits for signal');
  expect(await linesOnServer(office)).toHaveLength(2);
  await context.setOffline(false);
  await comesBack(page);
  await expect
    .poll(async () => (await linesOnServer(office)).filter((line) => line.startsWith('load/')).length, {
      timeout: 20_000,
    })
    .toBe(1);
  await expect.poll(() => page.locator('#on-job').textContent()).not.toContain('waits');
  await context.close();
});
