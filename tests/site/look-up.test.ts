import type { Browser, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import { violationsOn } from './axe.ts';
import { served } from './served.ts';

const site = served(createApp({ ask }).fetch);

async function open(path: string, options: Parameters<Browser['newContext']>[0] = {}): Promise<Page> {
  const context = await site.browser.newContext({ viewport: { width: 390, height: 844 }, ...options });
  const page = await context.newPage();
  await page.goto(site.address + path);
  return page;
}

/** Asks and presses the button that makes the sheet. */
async function sheet(page: Page): Promise<void> {
  await page.getByLabel('Your question').fill('how many tons for 300 x 12 ft at 2 in, county road posted 45 mph');
  await page.getByRole('button', { name: 'Send' }).last().click();
  await page.locator('.entry').waitFor();
  await page.getByRole('button', { name: 'Job sheet to print' }).click();
  await page.locator('.jobsheet .figures').waitFor();
}

const paths = [
  '/cards',
  '/cards?q=tack',
  '/cards/emergency-burn',
  '/rules',
  '/rules/limit/lift-max',
  '/words',
  '/sheet',
];

describe.each(paths)('%s', (path) => {
  test('axe finds nothing, by day and by night; nothing runs off at 320 px', async () => {
    for (const colorScheme of ['light', 'dark'] as const) {
      const page = await open(path, { viewport: { width: 320, height: 640 }, colorScheme });
      await page.evaluate('for (const fold of document.querySelectorAll("main details")) fold.open = true');
      expect(await violationsOn(page)).toEqual([]);
      const wide = await page.evaluate<number>('document.documentElement.scrollWidth - innerWidth');
      expect(wide).toBeLessThanOrEqual(0);
      await page.context().close();
    }
  });
});

test('the job sheet says what was answered, and prints on Letter and A4', async () => {
  const page = await open('/', { javaScriptEnabled: false });
  await sheet(page);
  const { job } = ask({ question: 'how many tons for 300 x 12 ft at 2 in, county road posted 45 mph' });
  const text = await page.locator('.jobsheet').innerText();
  for (const question of ['how many tons to order', 'how much tack', 'how many lifts', 'rolling time']) {
    expect(text, question).toContain(ask({ question, job }).values[0]!.text);
  }
  const zone = ask({ question: 'lay out the work zone with flaggers', job });
  const whole = await page.locator('.jobsheet').textContent();
  for (const { what } of zone.load) expect(whole).toContain(what);
  expect(await page.locator('.jobsheet .layout ol li').count()).toBeGreaterThanOrEqual(zone.layout.length - 1);
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('header nav').isVisible()).toBe(false);
  expect(await page.locator('.head .blank').count()).toBe(4);
  expect(await page.locator('.record .blank').count()).toBeGreaterThan(5);
  // What is ordered stands first, and its table is not sent to a page of its own.
  const [known, order] = await Promise.all([
    page.locator('.jobsheet .answer > p').first().boundingBox(),
    page.locator('.jobsheet .figures table').first().boundingBox(),
  ]);
  expect(order!.y - known!.y - known!.height).toBeLessThan(20);
  const breaks = "getComputedStyle(document.querySelector('.jobsheet .figures')).breakInside";
  expect(await page.evaluate<string>(breaks)).toBe('auto');
  for (const format of ['Letter', 'A4'] as const) {
    const pdf = await page.pdf({ format, preferCSSPageSize: false });
    expect(pdf.subarray(0, 4).toString()).toBe('%PDF');
    const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThan(0);
    expect(pages, format).toBeLessThanOrEqual(7);
  }
});

test('every link of a record and of a card leads somewhere', async () => {
  for (const path of ['/cards/term-tack', '/rules', '/words']) {
    const html = await (await fetch(site.address + path)).text();
    const links = [...html.matchAll(/href="(\/[a-z][^"?#]*)"/g)].map(([, link]) => link!);
    for (const link of new Set(links)) expect((await fetch(site.address + link)).status, link).toBe(200);
  }
});
