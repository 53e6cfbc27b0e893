import { readFileSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { serve } from '@hono/node-server';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import type { Store } from '../../src/server/store/store.ts';
import { openBrowser } from '../site/browser.ts';
import { overBothEngines, type Place } from './engines.ts';

/** One job on two browsers: the office has signal all the time, the foreman half of it. */
const list = [
  'Sta;End;Side;Width ft;Depth in;Distress;Remarks',
  '12+50;15+50;RT;12;2;alligator cracking;soft edge',
  '18+00;19+50;LT;10;1,5;rutting;',
  '40+00;40+60;RT;8;3;pothole;',
].join('\n');
const day = '2026-05-04';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => browser?.close());

overBothEngines((_engine, placeOf) => {
  let here: Place;
  let store: Store;
  const doors: Door[] = [];
  const complaints: string[] = [];

  /** A way to the one server, that can be cut: what a phone behind a hill sees of it. */
  interface Door {
    address: string;
    open(): Promise<void>;
    shut(): Promise<void>;
  }
  async function door(): Promise<Door> {
    const { fetch } = createApp({ ask, store: async () => store });
    let server: Server | undefined;
    let port = 0;
    const made: Door = {
      address: '',
      async open() {
        server = serve({ fetch, port, hostname: '127.0.0.1' }) as Server;
        if (!server.listening) await new Promise((resolve) => server!.once('listening', resolve));
        port = (server.address() as AddressInfo).port;
        made.address = `http://127.0.0.1:${port}`;
      },
      async shut() {
        const closing = server;
        server = undefined;
        closing?.closeAllConnections();
        await new Promise((resolve) => (closing ? closing.close(resolve) : resolve(undefined)));
      },
    };
    await made.open();
    doors.push(made);
    return made;
  }

  beforeEach(async () => {
    here = await placeOf();
    store = await here.open();
  });
  afterEach(async () => {
    for (const each of doors.splice(0)) await each.shut();
    await store.close();
    await here.clear();
  });

  async function phone(width = 390): Promise<Page> {
    const context = await browser.newContext({ viewport: { width, height: 844 } });
    const page = await context.newPage();
    page.on('pageerror', (fault) => complaints.push(fault.message));
    return page;
  }
  /** What the phone needs is kept on it. A page that came while that went on is not served by the worker, but the next one is. */
  const ready = (page: Page) =>
    expect
      .poll(
        () =>
          page.evaluate<string | undefined>(
            'navigator.serviceWorker.getRegistration().then((found) => found?.active?.state)',
          ),
        { timeout: 60_000 },
      )
      .toBe('activated');
  const status = (page: Page, text: RegExp) =>
    expect.poll(() => page.locator('#sync').textContent(), { timeout: 30_000 }).toMatch(text);
  const main = (page: Page, text: string | RegExp) =>
    expect.poll(() => page.locator('main').innerText(), { timeout: 30_000 }).toMatch(text);
  /** Asks for what others wrote now, and does not wait for the next time. */
  const look = (page: Page) => page.evaluate("dispatchEvent(new Event('online'))");

  /** Opens a folded form by its title, fills it in and sends it. */
  async function fill(
    page: Page,
    title: string,
    fields: Readonly<Record<string, string>>,
    at: Page | Locator = page,
  ): Promise<void> {
    const details = at.locator('details', { has: page.locator('summary', { hasText: new RegExp(`^${title}$`) }) });
    if ((await details.getAttribute('open')) === null) await details.locator('summary').click();
    for (const [name, value] of Object.entries(fields)) {
      const field = details.locator(`[name="${name}"]:not([type=hidden])`);
      if ((await field.evaluate((made) => made.tagName)) === 'SELECT') await field.selectOption({ label: value });
      else await field.fill(value);
    }
    await details.locator('button[type=submit]').click();
    // Folded again: it is kept.
    await expect.poll(() => details.getAttribute('open'), { timeout: 30_000 }).toBe(null);
  }
  const patch = (page: Page, label: string) =>
    page.locator('.patches > li', { has: page.locator('b', { hasText: new RegExp(`^Patch ${label}$`) }) });

  test('from a pasted patrol list through order and laying to the printed record, one of two phones without signal half the time', {
    timeout: 240_000,
  }, async () => {
    const [hill, town] = [await door(), await door()];
    const [office, foreman] = [await phone(1280), await phone()];

    // The office pastes the list and tells the prices.
    await office.goto(`${town.address}/job`);
    await office.getByLabel('Name of the job').fill('Spring list');
    await office.getByLabel('Road', { exact: true }).fill('CR 9');
    await office.getByLabel('Patrol list, if there is one').fill(list);
    await office.getByRole('button', { name: 'Start the job' }).click();
    await main(office, /3 patches put on the job/);
    // 300×12×2, 150×10×1.5 and 60×8×3 at 110 lb/yd2/in: 44, 13.75 and 8.8 tons, by hand.
    await main(office, /66\.6 tons in place/);
    await status(office, /All of it is on the server/);
    await fill(office, 'Say or ask something of the job', { text: 'mix is $85 a ton and trucks carry 12 tons' });
    await main(office, /Cost of the mix ordered: \$/);
    await status(office, /All of it is on the server/);
    await ready(office);

    await office.goto(`${office.url()}/links`);
    await office.getByRole('button', { name: 'Make the link: edit everything' }).click();
    const link = new URL((await office.locator('.notice a').getAttribute('href'))!);
    await office.getByRole('link', { name: 'Back to the job' }).click();

    // The foreman opens it while there is signal, and drives off.
    await foreman.goto(hill.address + link.pathname);
    await status(foreman, /All of it is on the server/);
    await ready(foreman);
    await hill.shut();
    await foreman.goto(hill.address + link.pathname);
    await main(foreman, /66\.6 tons in place/);
    await status(foreman, /No signal/);

    // 45 tons on the first 140 of 300 ft: far too thick, and told at once.
    await fill(foreman, 'Write down a load', {
      day,
      time: '08:10',
      patch: '1',
      'placed-mass': '45 tons',
      'placed-length': '140 ft',
      ticket: '77',
    });
    await main(foreman, /It is going down too thick/);
    await fill(foreman, 'Write down hours', { day, who: 'j.d.', 'work-hours': '9' });
    await patch(foreman, '1').getByRole('button', { name: 'Done' }).click();
    await expect.poll(() => patch(foreman, '1').getAttribute('class')).toBe('done');
    await status(foreman, /3 changes wait for signal/);
    // A reload loses nothing of it.
    await foreman.reload();
    await status(foreman, /3 changes wait for signal/);
    await main(foreman, /Down so far: 45\.0 tons/);

    // Both change the lane of patch 2, and neither has seen the other.
    await fill(foreman, 'Change patch 2', { lane: 'left', note: 'wet' }, patch(foreman, '2'));
    await fill(office, 'Change patch 2', { lane: 'both' }, patch(office, '2'));
    await status(office, /All of it is on the server/);
    // The foreman is typing when the signal comes back: what is typed stays.
    await foreman.locator('summary', { hasText: 'Write down a load' }).click();
    const ticket = foreman.locator('details[open] [name=ticket]');
    await ticket.fill('78');
    await hill.open();
    await look(foreman);
    await status(foreman, /All of it is on the server/);
    await main(foreman, /Two people set this without seeing each other/);
    expect(await ticket.inputValue()).toBe('78');
    await ticket.fill('');
    await look(office);
    await main(office, /Two people set this without seeing each other/);
    await main(office, /Down so far: 45\.0 tons/);
    await office.getByRole('button', { name: 'left' }).click();
    await expect.poll(() => office.locator('.clashes').count()).toBe(0);
    await status(office, /All of it is on the server/);
    await look(foreman);
    await expect.poll(() => foreman.locator('.clashes').count(), { timeout: 30_000 }).toBe(0);
    expect(await patch(foreman, '2').innerText()).toContain('left');

    // Without signal again: the rest is laid, a slip taken back, the record read on the phone.
    await hill.shut();
    for (const [label, mass] of [
      ['2', '14 tons'],
      ['3', '90 tons'],
    ] as const)
      await fill(foreman, 'Write down a load', { day, time: '13:00', patch: label, 'placed-mass': mass });
    await foreman.getByRole('button', { name: 'Undo that' }).click();
    await fill(foreman, 'Write down a load', { day, time: '13:00', patch: '3', 'placed-mass': '9 tons' });
    for (const label of ['2', '3']) {
      await patch(foreman, label).getByRole('button', { name: 'Done' }).click();
      await expect.poll(() => patch(foreman, label).getAttribute('class')).toBe('done');
    }
    await foreman.getByRole('link', { name: day }).click();
    await main(foreman, /0 patches, 0(\.0)? tons to lay/);
    const onPhone = await foreman.locator('main').innerText();
    await foreman.goto(hill.address + link.pathname);
    const saved = async (page: Page) => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('link', { name: 'CSV for a spreadsheet' }).click(),
      ]);
      return readFileSync(await download.path(), 'utf8');
    };
    const without = await saved(foreman);

    await hill.open();
    await look(foreman);
    await status(foreman, /All of it is on the server/);
    await look(office);
    await main(office, /Down so far: 68\.0 tons/);
    await status(office, /All of it is on the server/);
    expect(await saved(office)).toBe(without);
    const server = createApp({ ask, store: async () => store });
    expect(await (await server.request(`${link.pathname}/export.csv`)).text()).toBe(without.replace('\uFEFF', ''));

    // The record the office prints says what the foreman's phone said.
    await office.goto(`${town.address}${link.pathname}/day/${day}`);
    await main(office, /Patch 3: 9\.0 tons today/);
    expect(words(await office.locator('main').innerText())).toBe(words(onPhone));
    for (const text of ['08:10', '77', 'JD: 9.0 hours', '68.0 tons'])
      expect(await office.locator('main').innerText()).toContain(text);
    await office.goto(`${town.address}${link.pathname}/season`);
    await main(office, /CR 9[\s\S]*68\.0 tons/);

    expect(complaints).toEqual([]);
    await office.context().close();
    await foreman.context().close();
  });
});

const words = (text: string): string => text.replace(/\s+/g, ' ').trim();
