import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import { served } from './served.ts';
import { send } from './talk.ts';

const site = served(createApp({ ask }).fetch);

const tons = 'how many tons for 300 x 12 ft at 2 in';
const phone = { width: 390, height: 844 };
const opened: Page[] = [];

afterEach(async () => {
  for (const page of opened.splice(0)) await page.context().close();
});

async function open(options: BrowserContextOptions): Promise<Page> {
  const context = await site.browser.newContext(options);
  // Layout Instability: what moved without being moved by whoever reads, with the places of it.
  await context.addInitScript(`
    window.moved = [];
    new PerformanceObserver((list) => {
      for (const { value, hadRecentInput, sources } of list.getEntries())
        if (!hadRecentInput) moved.push([value, ...sources.map(({ node }) => node?.className || node?.nodeName)].join(' '));
    }).observe({ type: 'layout-shift', buffered: true });
  `);
  return visit(context.newPage());
}

async function visit(opening: Promise<Page>): Promise<Page> {
  const page = await opening;
  opened.push(page);
  await page.goto(site.address);
  const ready = () => page.evaluate<boolean>(`performance.getEntriesByName('answers ready').length > 0`);
  await expect.poll(ready, { timeout: 20_000 }).toBe(true);
  return page;
}

const moved = async (page: Page): Promise<string[]> => {
  await page.waitForTimeout(300);
  return page.evaluate<string[]>('moved');
};

test.each([
  ['phone', phone],
  ['desk', { width: 1280, height: 900 }],
])(
  'nothing moves by itself on a %s: when it opens, when answers come, when they are taken up again, when the signal goes',
  async (_, viewport) => {
    const page = await open({ viewport });
    for (const question of [tons, 'what about 14 feet wide?', 'can we lay a 2 in lift', 'who won the game'])
      await send(page, question);
    expect(await moved(page)).toEqual([]);
    await page.waitForTimeout(300);
    const again = await visit(page.context().newPage());
    await again.locator('.entry').nth(3).waitFor();
    await expect.poll(() => again.locator('#status').innerText()).toMatch(/are back/);
    await page.context().setOffline(true);
    await expect.poll(() => again.locator('#phone').innerText()).toMatch(/No signal/);
    expect(await moved(again)).toEqual([]);
  },
);

test('answers out of sight are not laid out anew, and have their size when they come back', async () => {
  const page = await open({ viewport: phone });
  const height = () => page.evaluate<number>(`document.querySelector('.entries > li').getBoundingClientRect().height`);
  for (const question of [tons, 'what about 14 feet wide?']) await send(page, question);
  await page.waitForTimeout(200);
  const before = await height();
  await send(page, 'can we lay a 2 in lift');
  expect(await page.evaluate("getComputedStyle(document.querySelector('.entries > li')).contentVisibility")).toBe(
    'auto',
  );
  expect(await height()).toBeCloseTo(before, 0);
  await page.evaluate('scrollTo(0, 0)');
  await page.waitForTimeout(300);
  expect(await height()).toBeCloseTo(before, 0);
  expect(await moved(page)).toEqual([]);
});

test('what is read stays where it is while somebody types, and the answer comes to the top', async () => {
  const page = await open({ viewport: phone, hasTouch: true, isMobile: true });
  await send(page, tons);
  await page.evaluate('scrollTo(0, 700)');
  await page.tap('#question');
  await page.keyboard.type('what about 14 feet wide?');
  expect(await page.evaluate('scrollY')).toBe(700);
  await page.keyboard.press('Enter');
  const latest = page.locator('.entry').nth(1);
  await latest.waitFor();
  const { y } = (await latest.boundingBox())!;
  expect(y).toBeGreaterThanOrEqual(0);
  expect(y).toBeLessThan(60);
  // What was to be sent next after the first answer is gone, what can be changed in it is not.
  expect(await page.locator('.entry').first().locator('.chip').count()).toBe(0);
  expect(await page.locator('.entry').first().locator('.change').count()).toBeGreaterThan(0);
});

test('signs that a keyboard of glass hides are put where the cursor stands', async () => {
  const page = await open({ viewport: phone, hasTouch: true, isMobile: true });
  const box = page.getByLabel('Your question');
  await box.tap();
  await page.keyboard.type('tons for 12');
  for (const sign of ['ft', 'x', '½', '"'])
    await page.locator('.symbols').getByRole('button', { name: sign, exact: true }).tap();
  expect(await box.inputValue()).toBe('tons for 12 ft x ½"');
  const low = await page.evaluate<number>(
    `Math.min(...[...document.querySelectorAll('.symbols button')].map((each) => each.getBoundingClientRect().height))`,
  );
  expect(low).toBeGreaterThanOrEqual(48);
});
