import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import { violationsOn } from './axe.ts';
import { served } from './served.ts';

const site = served(createApp({ ask }).fetch);

const pages: Page[] = [];
/** What the browser complains of: a blocked style, a picture that is not there. */
const complaints: string[] = [];

afterEach(async () => {
  for (const page of pages.splice(0)) await page.context().close();
  expect(complaints.splice(0).filter((text) => !text.includes('422'))).toEqual([]);
});

const phone = { width: 390, height: 844 };
const desk = { width: 1280, height: 900 };
const narrow = { width: 320, height: 640 };
const tons = 'how many tons for 300 x 12 ft at 2 in';
const tooThick = 'can we lay a 2 in lift';
const noDepth = 'how many tons for 150 x 12 ft';

async function open(viewport: { width: number; height: number }, options: BrowserContextOptions = {}): Promise<Page> {
  const context = await site.browser.newContext({ viewport, ...options });
  const page = await context.newPage();
  pages.push(page);
  page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
  await page.goto(site.address);
  return page;
}

/** Types a question and sends it; waits for its answer. */
async function send(page: Page, question: string): Promise<void> {
  const before = await page.locator('.entry').count();
  await page.getByLabel('Your question').fill(question);
  await page.getByRole('button', { name: 'Send' }).last().click();
  await page.locator('.entry').nth(before).waitFor();
}

const latest = (page: Page) => page.locator('.entry').last();
const sideways = (page: Page) =>
  page.evaluate<number>('document.documentElement.scrollWidth - document.documentElement.clientWidth');

describe.each([
  ['a phone', phone, true],
  ['a phone without script', phone, false],
  ['a desk', desk, true],
  ['a desk without script', desk, false],
])('on %s', (_, viewport, javaScriptEnabled) => {
  test('a question is typed, sent and answered, and the next one goes on from it', async () => {
    const page = await open(viewport, { javaScriptEnabled });
    await send(page, tons);
    await expect.poll(() => latest(page).locator('.figure.main .amount').innerText()).toBe('44.0 tons');
    expect(await page.getByLabel('Your question').inputValue()).toBe('');
    await send(page, 'what about 14 feet wide?');
    // 400 sq yd x 14/12 x 2 in x 110 lb/sq yd/in / 2,000 = 51.3 tons.
    expect(await latest(page).locator('.figure.main .amount').innerText()).toBe('51.3 tons');
    expect(await page.locator('.entry').count()).toBe(2);
    expect(await page.locator('.known').innerText()).toMatch(/14 ft/);
  });

  test('the answer stands at the top of the screen, the question box at its foot', async () => {
    const page = await open(viewport, { javaScriptEnabled });
    await send(page, tons);
    await send(page, tooThick);
    const [sheet, box] = [await latest(page).boundingBox(), await page.getByLabel('Your question').boundingBox()];
    expect(sheet!.y).toBeGreaterThanOrEqual(0);
    expect(sheet!.y).toBeLessThan(60);
    expect(box!.y).toBeGreaterThan(viewport.height * 0.75);
    expect(box!.y + box!.height).toBeLessThanOrEqual(viewport.height);
  });
});

describe('the question box', () => {
  const rows = 'station,left,right\n0+00,1,1\n0+25,1,3\n0+50,1,1\n12 ft wide';

  test('Enter sends, with Shift it begins a new line', async () => {
    const page = await open(desk);
    const box = page.getByLabel('Your question');
    await box.pressSequentially('how many tons for');
    await box.press('Shift+Enter');
    await box.pressSequentially('300 x 12 ft at 2 in');
    expect(await box.inputValue()).toBe('how many tons for\n300 x 12 ft at 2 in');
    await box.press('Enter');
    await page.locator('.entry').waitFor();
    expect(await latest(page).locator('.figure.main .amount').innerText()).toBe('44.0 tons');
    expect(await box.inputValue()).toBe('');
  });

  test.each([true, false])('pasted rows keep their lines, script: %s', async (javaScriptEnabled) => {
    const page = await open(phone, { javaScriptEnabled });
    await send(page, rows);
    // Means of 1, 2 and 1 in at 25 ft: 75 in·ft × 12 ft ÷ 12 = 75 ft3, × 146.67 lb ÷ 2,000 = 5.5 tons.
    expect(await latest(page).locator('.figure.main .amount').innerText()).toBe('5.5 tons');
    expect(await latest(page).locator('h3').innerText()).toContain('0+25,1,3\n0+50,1,1');
  });

  test('it grows with its lines, and no further than leaves the answer in sight', async () => {
    const page = await open(phone);
    const height = () => page.getByLabel('Your question').evaluate((box) => box.getBoundingClientRect().height);
    expect(await height()).toBe(64);
    await page.getByLabel('Your question').fill(rows);
    expect(await height()).toBeGreaterThan(100);
    await page.getByLabel('Your question').fill('1\n'.repeat(100));
    expect(await height()).toBeLessThan(0.31 * phone.height);
  });
});

describe('buttons', () => {
  test('a choice is sent as it reads, and what was typed stays', async () => {
    const page = await open(phone, { javaScriptEnabled: false });
    await send(page, noDepth);
    await page.getByLabel('Your question').fill('half a thought');
    await latest(page).getByRole('button', { name: '2 in', exact: true }).click();
    await page.locator('.entry.value').waitFor();
    expect(await latest(page).locator('h3').innerText()).toMatch(/2 in$/);
    expect(await latest(page).locator('.figure.main .amount').innerText()).toBe('22.0 tons');
    expect(await page.getByLabel('Your question').inputValue()).toBe('half a thought');
  });

  test('an assumed figure is changed by one press, a new number and Enter', async () => {
    const page = await open(phone, { javaScriptEnabled: false });
    await send(page, tons);
    await latest(page).locator('.assumed .change').first().click();
    await page.waitForURL(/#question$/);
    const box = page.getByLabel('Your question');
    expect(await box.evaluate((element) => element.matches(':focus'))).toBe(true);
    const words = await box.inputValue();
    expect(words).toMatch(/110/);
    await send(page, words.replace('110', '112'));
    // 400 sq yd x 2 in x 112 lb/sq yd/in / 2,000 = 44.8 tons.
    expect(await latest(page).locator('.figure.main .amount').innerText()).toBe('44.8 tons');
  });

  test('an example on the empty page is answered', async () => {
    const page = await open(phone, { javaScriptEnabled: false });
    const examples = await page.locator('.chip').allInnerTexts();
    expect(examples.length).toBeGreaterThan(1);
    for (const example of examples) {
      await page.goto(site.address);
      await page.getByRole('button', { name: example }).click();
      await latest(page).waitFor();
      expect(await latest(page).getAttribute('class'), example).toMatch(/value|verdict/);
    }
  });

  test('what cannot be asked is said at the box, and nothing is lost', async () => {
    const page = await open(phone, { javaScriptEnabled: false });
    await send(page, tons);
    await page.getByLabel('Your question').fill('x'.repeat(2001));
    await page.getByRole('button', { name: 'Send' }).last().click();
    await page.locator('#error').waitFor();
    expect(await page.locator('#error').innerText()).toMatch(/over 2,000 characters/);
    expect(await page.getByLabel('Your question').inputValue()).toHaveLength(2001);
    expect(await page.locator('.entry').count()).toBe(1);
  });
});

describe('for everybody', () => {
  test.each([
    ['phone', phone, 'light'],
    ['phone at night', phone, 'dark'],
    ['desk', desk, 'light'],
  ] as const)('axe finds nothing, AAA contrast and targets included: %s', async (_, viewport, colorScheme) => {
    const page = await open(viewport, { colorScheme });
    const check = async () => {
      expect(await violationsOn(page)).toEqual([]);
    };
    await check();
    for (const question of [tons, tooThick, noDepth, 'who won the game']) await send(page, question);
    await page.evaluate('for (const fold of document.querySelectorAll("details")) fold.open = true');
    await check();
  });

  test('nothing runs off sideways at 320 px, folds open', async () => {
    const page = await open(narrow);
    expect(await sideways(page)).toBe(0);
    for (const question of [tons, tooThick, noDepth, `${'w'.repeat(200)}?`]) await send(page, question);
    await page.evaluate('for (const fold of document.querySelectorAll("details")) fold.open = true');
    expect(await sideways(page)).toBe(0);
  });

  test('every control is 48 px high or more, send and quick questions 64', async () => {
    const page = await open(phone);
    for (const question of [tons, noDepth]) await send(page, question);
    const low = await page.evaluate<string[]>(`[...document.querySelectorAll('a, button, summary, label, textarea')]
      .filter((element) => element.checkVisibility() && !element.matches('.away, .skip, .composer label'))
      .filter((element) => element.getBoundingClientRect().height < (element.matches('.send, .chip, .tick') ? 64 : 48) - 0.01)
      .map((element) => element.outerHTML)`);
    expect(low).toEqual([]);
  });

  test('the keyboard alone will do: skip link, focus that shows, folds that open', async () => {
    const page = await open(desk);
    await send(page, tons);
    await page.goto(`${site.address}/?q=${encodeURIComponent(tons)}`);
    await page.keyboard.press('Tab');
    const skip = page.getByRole('link', { name: 'Go to the latest answer' });
    expect(
      await skip.evaluate((element) => element.matches(':focus') && element.getBoundingClientRect().width > 40),
    ).toBe(true);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    const style = await page.evaluate<string>('getComputedStyle(document.activeElement).outlineStyle');
    expect(style).toBe('solid');
    const fold = page.locator('summary').first();
    await fold.focus();
    await page.keyboard.press('Enter');
    expect(await page.locator('details').first().getAttribute('open')).toBe('');
  });

  test('text spaced out as WCAG 1.4.12 has it still fits', async () => {
    const page = await open(narrow);
    await send(page, tons);
    await page.evaluate(`for (const element of document.querySelectorAll('body *')) {
      Object.assign(element.style, { lineHeight: '1.5', letterSpacing: '0.12em', wordSpacing: '0.16em' });
    }`);
    expect(await sideways(page)).toBe(0);
    const clipped = await page.evaluate<string[]>(`[...document.querySelectorAll('button, .mark, .figure, summary')]
      .filter((element) => element.checkVisibility() && !element.matches('.away'))
      .filter((element) => element.scrollHeight > element.clientHeight + 2 || element.scrollWidth > element.clientWidth + 2)
      .map((element) => element.outerHTML)`);
    expect(clipped).toEqual([]);
  });
});

test('on paper there is the sheet, its workings and its sources, and no button', async () => {
  const page = await open(desk);
  await send(page, tons);
  await page.emulateMedia({ media: 'print' });
  const visible = await page.evaluate<
    string[]
  >(`[...document.querySelectorAll('.composer, .chip, nav, .units, .workings li, footer')]
    .filter((element) => element.checkVisibility({ contentVisibilityAuto: true }))
    .map((element) => element.className || element.tagName)`);
  expect(new Set(visible)).toEqual(new Set(['LI', 'FOOTER']));
});
