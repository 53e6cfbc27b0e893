import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openBrowser } from './browser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

test('a page is shown, its script runs, and letters take room', async () => {
  const page = await browser.newPage();
  await page.goto(`data:text/html,<h1 style="display:inline-block">Patch</h1><script>document.title = 1 + 1</script>`);
  expect(await page.textContent('h1')).toBe('Patch');
  expect(await page.title()).toBe('2');
  // Without a font every letter is as wide as the next one or has no width at all.
  const widths = await page.evaluate<number[]>(`['iiii', 'WWWW'].map((text) => {
    const mark = document.createElement('span');
    document.body.append(mark);
    mark.textContent = text;
    return mark.getBoundingClientRect().width;
  })`);
  expect(widths[0]).toBeGreaterThan(0);
  expect(widths[1]).toBeGreaterThan(widths[0]! * 1.5);
  await page.close();
});

test('two contexts live side by side', async () => {
  const pages = await Promise.all([1, 2].map(async () => (await browser.newContext()).newPage()));
  for (const [index, page] of pages.entries()) await page.setContent(`<p>crew ${index}</p>`);
  expect(await Promise.all(pages.map((page) => page.textContent('p')))).toEqual(['crew 0', 'crew 1']);
  expect(browser.isConnected()).toBe(true);
});
