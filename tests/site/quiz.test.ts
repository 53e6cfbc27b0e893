import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { buildQuiz } from '../../src/ask/quiz/build.ts';
import { readCall } from '../../src/ask/quiz/desk/call.ts';
import { kinds } from '../../src/ask/quiz/shapes.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { createApp } from '../../src/server/app.ts';
import type { Store } from '../../src/server/store/store.ts';
import { rightAnswer } from '../quiz/sets.ts';
import { sqlitePlace } from '../store/engines.ts';
import { violationsOn } from './axe.ts';
import { pagesIn, textIn } from './pdf.ts';
import { served } from './served.ts';

let store: Store;
const place = sqlitePlace();
const pages: Page[] = [];
const complaints: string[] = [];

beforeAll(async () => {
  store = await place.open();
});
afterEach(async () => {
  for (const page of pages.splice(0)) await page.context().close();
  expect(complaints.splice(0).filter((text) => !/\b(?:404|422)\b/.test(text))).toEqual([]);
});
afterAll(async () => {
  await store.close();
  await place.clear();
});
const site = served(createApp({ ask, store: async () => store }).fetch);

const phone = { width: 390, height: 844 };
const narrow = { width: 320, height: 640 };
const desk = { width: 1280, height: 900 };

async function open(path: string, viewport = phone, options: BrowserContextOptions = {}): Promise<Page> {
  const context = await site.browser.newContext({ viewport, javaScriptEnabled: false, ...options });
  const page = await context.newPage();
  pages.push(page);
  page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
  await page.goto(site.address + path);
  return page;
}

const itemsAt = (url: string) => {
  const built = buildQuiz(knowledge, readCall(new URL(url, site.address).searchParams).request);
  if ('fault' in built) throw new Error(built.fault);
  return built.set.items;
};

test('a set is built, looked at, a question swapped, taken and marked, all without script', async () => {
  const page = await open('/quiz');
  await page.getByLabel('For whom').selectOption('roller');
  await page.getByLabel('How many questions').fill('8');
  await page.getByLabel('Rolling', { exact: true }).check();
  await page.getByRole('button', { name: 'Make the set' }).click();
  expect(await page.locator('.questions > li').count()).toBe(8);
  const stems = await page.locator('.questions > li > .stem').allInnerTexts();
  const swap = page.getByRole('link', { name: /^Swap this question/ }).first();
  const at = Number((await swap.getAttribute('aria-label'))!.split(' ').at(-1));
  await swap.click();
  const after = await page.locator('.questions > li > .stem').allInnerTexts();
  expect(after.filter((stem, place) => stem !== stems[place])).toHaveLength(1);
  expect(after[at - 1]).not.toBe(stems[at - 1]);
  const items = itemsAt(page.url());
  await page.getByRole('link', { name: 'Take it on this phone' }).click();
  for (const item of items) {
    const given = rightAnswer(item);
    for (const [place, value] of given.entries()) {
      if (item.kind === 'order') await page.locator(`[name="answer-${item.id}-${place + 1}"]`).fill(value);
      else if (item.kind === 'number') await page.locator(`[name="answer-${item.id}"]`).fill(value);
      else await page.locator(`[name="answer-${item.id}"][value="${value}"]`).check();
    }
  }
  await page.getByRole('button', { name: 'Mark my answers' }).click();
  expect(await page.locator('h1').innerText()).toBe('8 of 8 right');
  expect(await page.locator('.failed').count()).toBe(0);
});

describe.each(kinds)('a set of kind %s', (kind) => {
  const query = `kind=${kind}&count=4&seed=kind`;

  test('is printed: sheet and key come out on paper, with their words and without the buttons', async () => {
    for (const sheet of ['sheet', 'key']) {
      const page = await open(`/quiz/${sheet}?${query}`, desk);
      await page.emulateMedia({ media: 'print' });
      const shown = await page.evaluate<string[]>(`[...document.querySelectorAll('.go, nav, .send, .screen-only')]
        .filter((element) => element.checkVisibility()).map((element) => element.outerHTML)`);
      expect(shown).toEqual([]);
      const text = textIn(await page.pdf({ format: 'Letter' }));
      // A PDF keeps a raised figure as the figure.
      const bare = (words: string): string => words.replace(/\s/g, '').replaceAll('²', '2');
      for (const item of itemsAt(`/?${query}`)) {
        expect(text).toContain(bare(item.stem));
        if (sheet === 'sheet') for (const option of item.options) expect(text).toContain(bare(option.text));
        // Asked for the reason of a rule, the reason is one of the options.
        if (item.why !== item.key) expect(text.includes(bare(item.why))).toBe(sheet === 'key');
        if (sheet === 'key') expect(text).toContain(bare(item.source));
      }
      expect(text).toContain(bare(`seed kind, rules ${knowledge.version}`));
    }
  });
});

test('the tailgate sheet has its key on a page of its own', async () => {
  const page = await open('/quiz/tailgate?topic=tack&level=easy&count=5', desk);
  expect(pagesIn(await page.pdf({ format: 'Letter' }))).toBeGreaterThan(1);
  expect(await page.locator('.tailgate .questions').first().locator('> li').count()).toBe(5);
});

test('a class on two phones: the crew answers, the trainer sees it and erases it', async () => {
  const trainer = await open('/quiz?seat=roller&count=5&seed=class');
  await trainer.getByRole('link', { name: 'Give it to a class' }).click();
  await trainer.getByRole('button', { name: 'Start the class' }).click();
  const link = await trainer.locator('.address a').innerText();
  const crew = await open(new URL(link).pathname);
  await crew.getByLabel('Your initials').fill('John Miller');
  await crew.getByRole('button', { name: 'Mark my answers' }).click();
  expect(await crew.locator('#who-error').innerText()).toContain('no name');
  await crew.getByLabel('Your initials').fill('JM');
  await crew.getByRole('button', { name: 'Mark my answers' }).click();
  expect(await crew.locator('.failed').innerText()).toContain('Not passed');
  await trainer.reload();
  expect(await trainer.locator('table').first().innerText()).toContain('JM');
  await trainer.locator('summary', { hasText: 'Erase this class' }).click();
  await trainer.getByRole('button', { name: 'Yes, erase all of it' }).click();
  expect(await trainer.locator('h1').innerText()).toContain('erased');
  await crew.goto(link);
  expect(await crew.locator('body').innerText()).toContain('There is no class here');
});

const everyScreen = [
  '/quiz',
  '/quiz?seat=flagger&count=12&seed=a&feedback=each',
  '/quiz?count=0',
  '/quiz/sheet?topic=hazards&count=6',
  '/quiz/key?topic=mix&topic=steps&count=8',
  '/quiz/tailgate?topic=safety&count=5',
  '/quiz/take?count=14&seed=b',
  '/quiz/take?count=3&seed=b&feedback=each',
  '/quiz/sign-off?seat=blade',
  '/quiz/class?count=5',
  '/quiz/practice',
];

describe('for everybody', () => {
  test.each([
    ['phone', phone, 'light'],
    ['phone at night', phone, 'dark'],
    ['desk', desk, 'light'],
  ] as const)(
    'axe finds nothing on any screen, AAA contrast and targets included: %s',
    { timeout: 120_000 },
    async (_, viewport, colorScheme) => {
      const page = await open('/quiz', viewport, { colorScheme, javaScriptEnabled: true });
      for (const path of everyScreen) {
        await page.goto(site.address + path);
        await page.locator('main h1').first().waitFor();
        await page.evaluate('for (const fold of document.querySelectorAll("details")) fold.open = true');
        expect(await violationsOn(page), path).toEqual([]);
      }
    },
  );

  test.each([
    ['320', narrow],
    ['390', phone],
    ['1280', desk],
  ])('nothing runs off sideways at %s px, and controls are 48 px high', { timeout: 60_000 }, async (_, viewport) => {
    const page = await open('/quiz', viewport, { javaScriptEnabled: true });
    for (const path of everyScreen) {
      await page.goto(site.address + path);
      await page.locator('main h1').first().waitFor();
      await page.evaluate('for (const fold of document.querySelectorAll("details")) fold.open = true');
      const over = 'document.documentElement.scrollWidth - document.documentElement.clientWidth';
      expect(await page.evaluate<number>(over), path).toBe(0);
      const low = await page.evaluate<
        string[]
      >(`[...document.querySelectorAll('main a, main button, main summary, main select, main .boxes label, main .answers label, main input:not([type=checkbox], [type=radio], [type=hidden])')]
        .filter((element) => element.checkVisibility() && !element.closest('.address'))
        .filter((element) => element.getBoundingClientRect().height < 47.9)
        .map((element) => element.outerHTML)`);
      expect(low, path).toEqual([]);
    }
  });
});
