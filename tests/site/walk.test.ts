import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import { served } from './served.ts';

const site = served(createApp({ ask }).fetch);

const pages: Page[] = [];

afterEach(async () => {
  for (const page of pages.splice(0)) await page.context().close();
});

async function open(path: string, options: BrowserContextOptions = {}): Promise<Page> {
  const context = await site.browser.newContext({ viewport: { width: 390, height: 844 }, ...options });
  const page = await context.newPage();
  pages.push(page);
  await page.goto(site.address + path);
  return page;
}

const latest = (page: Page) => page.locator('.entry').last();
/** True when the last such element stands whole in the window. */
const inSight = async (page: Page, selector: string): Promise<boolean> => {
  const box = await page.locator(selector).last().boundingBox();
  return box !== null && box.y >= 0 && box.y + box.height <= page.viewportSize()!.height;
};

test('a new hand gets from the open page to the right tons in under 20 s, and on in one tap', async () => {
  const begun = performance.now();
  const page = await open('/', { hasTouch: true });
  await page.getByLabel('Your question').tap();
  // Four letters a second, a quick thumb.
  await page.getByLabel('Your question').pressSequentially('how many tons for 300 x 12 ft at 2 in', { delay: 250 });
  await page.getByRole('button', { name: 'Send' }).last().tap();
  await latest(page).waitFor();
  // 400 sq yd x 2 in x 110 lb/sq yd/in / 2,000 = 44.0 tons.
  expect(await latest(page).locator('.figure.main .amount').innerText()).toBe('44.0 tons');
  expect(performance.now() - begun).toBeLessThan(20_000);
  await expect.poll(() => inSight(page, '.figure.main .amount')).toBe(true);

  await latest(page).getByRole('button', { name: 'How much do I order?' }).tap();
  await page.locator('.entry').nth(1).waitFor();
  // 1.05 for waste, and two feet past each end: 304 / 300.
  expect(await latest(page).locator('.figure.main .amount').innerText()).toBe('46.8 tons');
});

test('the example of the open page gives the tons in one tap', async () => {
  const page = await open('/', { hasTouch: true });
  await page.getByRole('button', { name: 'How many tons for 300 x 12 ft at 2 in' }).tap();
  await latest(page).waitFor();
  expect(await latest(page).locator('.figure.main .amount').innerText()).toBe('44.0 tons');
});

const screens = [
  '/',
  '/job',
  '/sheet',
  '/quiz',
  '/cards',
  '/cards/term-tack',
  '/rules',
  '/rules/limit/lift-max',
  '/words',
];

describe.each(screens)('%s', (path) => {
  test('every control is as high and as wide as a glove needs: 48 px', async () => {
    const page = await open(path);
    const small = await page.evaluate<
      string[]
    >(`[...document.querySelectorAll('a, button, summary, input, select, textarea')]
      .filter((element) => element.checkVisibility() && !element.closest('.away, .skip'))
      .map((element) => element.matches('[type=radio], [type=checkbox]') ? element.closest('label') ?? element : element)
      .filter((element) => !element.matches('p a, li p a, dd a'))
      .filter((element) => { const { width, height } = element.getBoundingClientRect(); return height < 47.9 || width < 47.9; })
      .map((element) => element.outerHTML.slice(0, 160))`);
    expect(small).toEqual([]);
  });

  test('the screens stand in one row of a phone', async () => {
    const page = await open(path);
    const tops = await page.evaluate<number[]>(
      `[...document.querySelectorAll('header nav a')].map((link) => Math.round(link.getBoundingClientRect().bottom))`,
    );
    expect(new Set(tops).size).toBe(1);
  });

  test('at 320 px, which is 1280 px at 400 %, nothing runs off sideways, in the largest type too', async () => {
    const page = await open(path, { viewport: { width: 320, height: 256 } });
    await page.evaluate(`document.documentElement.dataset.type = 'largest'`);
    const beyond = await page.evaluate<string[]>(`[...document.querySelectorAll('body *')]
      .filter((element) => element.checkVisibility() && element.getBoundingClientRect().right > innerWidth + 1)
      .filter((element) => !element.closest('.away, .skip, svg'))
      .slice(0, 3).map((element) => element.outerHTML.slice(0, 120))`);
    expect(beyond).toEqual([]);
  });
});

describe('eyes and hands that differ', () => {
  test('in the colours of the reader a stop, a caution and a button keep an edge', async () => {
    const page = await open(`/?q=${encodeURIComponent('can we lay a 2 in lift')}`, { forcedColors: 'active' });
    await latest(page).waitFor();
    for (const selector of ['.mark.stop', '.cautions', '.send', '.chip']) {
      const edge = await page.evaluate<string>(
        `getComputedStyle(document.querySelector('${selector}')).borderTopStyle`,
      );
      expect(edge, selector).not.toBe('none');
    }
    expect(await page.locator('.mark.stop').first().innerText()).toMatch(/STOP/i);
  });

  test('nothing moves for a reader who wants no motion', async () => {
    const page = await open(`/?q=${encodeURIComponent('how many tons for 300 x 12 ft at 2 in')}`, {
      reducedMotion: 'reduce',
    });
    await latest(page).waitFor();
    const moving = await page.evaluate<string[]>(`[...document.querySelectorAll('*')].filter((element) => {
      const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(element);
      return animationName !== 'none' || transitionDuration !== '0s' || scrollBehavior === 'smooth';
    }).map((element) => element.tagName)`);
    expect(moving).toEqual([]);
  });

  test('the keyboard walks the ask page from its head to Send, and every stop shows', async () => {
    const page = await open('/', { viewport: { width: 1280, height: 900 } });
    const stops: string[] = [];
    for (let press = 0; press < 40 && stops.at(-1) !== 'Send'; press++) {
      await page.keyboard.press('Tab');
      stops.push(
        await page.evaluate<string>(`(() => {
          const at = document.activeElement;
          const style = getComputedStyle(at);
          if (style.outlineStyle === 'none' && !at.matches(':focus-visible')) return 'unseen ' + at.outerHTML.slice(0, 80);
          const { bottom, top } = at.getBoundingClientRect();
          if (bottom < 0 || top > innerHeight) return 'out of sight ' + at.outerHTML.slice(0, 80);
          return at.id || at.innerText || at.value || at.name;
        })()`),
      );
    }
    expect(stops[0]).toBe('Go to the question box');
    for (const screen of ['Ask', 'Jobs', 'Sheet', 'Quiz', 'Cards', 'Rules', 'Words']) expect(stops).toContain(screen);
    expect(stops.slice(-2)).toEqual(['question', 'Send']);
    expect(stops.filter((stop) => /^(?:unseen|out of sight)/.test(stop))).toEqual([]);
  });
});
