import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Cell, Change } from '../../src/ask/book/change.ts';
import { createApp } from '../../src/server/app.ts';
import { addKeeper, keepGap } from '../../src/server/gaps/gaps.ts';
import { startJob } from '../../src/server/job/job.ts';
import type { Store } from '../../src/server/store/store.ts';
import { sqlitePlace } from '../store/engines.ts';
import { violationsOn } from './axe.ts';
import { pagesIn, textIn } from './pdf.ts';
import { served } from './served.ts';

let store: Store;
let job: string;
let screens: string[];
const place = sqlitePlace();
const day = '2026-05-04';
const now = '2026-05-04T12:00:00.000Z';

let made = 0;
const change = (line: string, set: Record<string, Cell>, by?: string): Change => ({
  id: `0mabcdefg.${String(made++).padStart(4, '0')}.phone1`,
  line,
  set,
  ...(by ? { by } : {}),
});
const tons = (number: number): Cell => ({ number, unit: 'ton' });
const patch = (at: number, from: string, to: string, depth: number): Change =>
  change(`patch/p${at}`, {
    label: String(at),
    station: from,
    'station-end': to,
    'patch-width': { number: 12, unit: 'ft' },
    'patch-depth': { number: depth, unit: 'in' },
    defect: 'rutting',
    note: 'soft edge',
  });

beforeAll(async () => {
  store = await place.open();
  const changes = [
    change('job', {
      name: 'Spring list',
      road: 'CR 9',
      'posted-speed': { number: 45, unit: 'mph' },
      'road-type': 'rural',
      'material-price': { number: 85, unit: 'USD/ton' },
      'crew-size': { number: 8, unit: '1' },
      'work-hours': { number: 16, unit: 'h' },
      'labor-rate': { number: 38, unit: 'USD/h' },
      machines: '12 ft grader 8331, roller and 2 dump trucks 8722',
      rates: { rules: JSON.parse(readFileSync('docs/examples/fema-rates-2025.json', 'utf8')) },
      order: 'urgent',
    }),
    patch(1, '12+50', '15+50', 2),
    patch(2, '18+00', '19+50', 1.5),
    change('patch/p1', { done: true }),
    // Two who have not seen each other.
    change('patch/p2', { lane: 'left' }, 'AB'),
    change('patch/p2', { lane: 'both' }, 'CD'),
    ...Array.from({ length: 24 }, (_, i) =>
      change(`load/l${i}`, {
        day,
        time: `${String(7 + (i >> 2)).padStart(2, '0')}:${(i % 4) * 15 || '00'}`,
        patch: 'patch/p1',
        ticket: String(100 + i),
        truck: `T${i % 3}`,
        'placed-mass': tons(2),
        'placed-length': { number: 10 + i * 10, unit: 'ft' },
      }),
    ),
    change('hours/h1', { day, who: 'JD', 'work-hours': { number: 9, unit: 'h' } }),
    change('hours/h2', { day, machine: 'grader', 'work-hours': { number: 6, unit: 'h' } }),
    change('weather/w1', { day, time: '07:00', 'air-temperature': { number: 68, unit: 'degF' }, sky: 'clear' }),
    change('event/e1', { day, what: 'delay', note: 'plant down', 'wait-time': { number: 20, unit: 'min' } }),
  ];
  job = `/job/${await startJob(store, changes, now)}`;
  await keepGap(store, { question: 'what does a zebra cost', reason: 'no-goal', day });
  const keeper = `/keeper/${await addKeeper(store, now)}`;
  screens = ['/job', job, `${job}/day/${day}`, `${job}/season`, `${job}/links`, '/gaps?q=what+of+it', keeper];
});
afterAll(async () => {
  await store.close();
  await place.clear();
});
const site = served(createApp({ ask, store: async () => store }).fetch);

async function open(path: string, width: number, more = {}): Promise<Page> {
  const context = await site.browser.newContext({ viewport: { width, height: 844 }, serviceWorkers: 'block', ...more });
  const page = await context.newPage();
  await page.goto(site.address + path);
  return page;
}

test.each([
  [390, 'light'],
  [390, 'dark'],
  [1280, 'light'],
] as const)(
  'axe finds nothing on any page of a job, and none is wider than the screen: %i %s',
  {
    timeout: 120_000,
  },
  async (width, colorScheme) => {
    const page = await open('/job', width, { colorScheme });
    for (const path of screens) {
      await page.goto(site.address + path);
      await page.locator('main h1').first().waitFor();
      if (path === job) await expect.poll(() => page.locator('#sync').textContent()).toContain('on the server');
      await page.evaluate('for (const fold of document.querySelectorAll("details")) fold.open = true');
      expect(await violationsOn(page), path).toEqual([]);
      expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth'), path).toBeLessThanOrEqual(0);
      if (process.env.SHOTS)
        await page.screenshot({
          path: `${process.env.SHOTS}/${screens.indexOf(path)}-${width}-${colorScheme}.png`,
          fullPage: true,
        });
    }
    await page.context().close();
  },
);

test('the page of a job prints with its traffic layout and its costs, without what is there to be pressed', async () => {
  const page = await open(job, 1280);
  await page.emulateMedia({ media: 'print' });
  const pressed = await page.evaluate(`[...document.querySelectorAll('button, input, textarea, nav, summary')]
    .filter((element) => element.checkVisibility()).map((element) => element.outerHTML)`);
  expect(pressed).toEqual([]);
  const pdf = await page.pdf({ format: 'Letter' });
  if (process.env.SHOTS) await page.pdf({ format: 'Letter', path: `${process.env.SHOTS}/job.pdf` });
  const text = textIn(pdf);
  for (const said of ['Trafficlayout', 'Loadonthetruck', 'Crew,machinesandcost', 'code8331'])
    expect(text).toContain(said);
  await page.context().close();
});

test.each(['Letter', 'A4'] as const)(
  'the record of a day prints whole on %s, without what is there to be pressed',
  async (format) => {
    const page = await open(`${job}/day/${day}`, 1280);
    await page.emulateMedia({ media: 'print' });
    const pressed = await page.evaluate(`[...document.querySelectorAll('button, input, nav, summary')]
    .filter((element) => element.checkVisibility()).map((element) => element.outerHTML)`);
    expect(pressed).toEqual([]);
    const pdf = await page.pdf({ format });
    if (process.env.SHOTS) await page.pdf({ format, path: `${process.env.SHOTS}/day-${format}.pdf` });
    const text = textIn(pdf);
    for (const said of ['Springlist', '100', '123', '48.0tons', 'JD:9.0hours', 'grader:6.0hours', 'plantdown', '68°F'])
      expect(text).toContain(said);
    expect(pagesIn(pdf)).toBeLessThanOrEqual(2);
    await page.context().close();
  },
);

test('what is said where one asks goes to the job that is open, and is taken back by a word', {
  timeout: 90_000,
}, async () => {
  const page = await open(job, 390);
  await expect.poll(() => page.locator('#sync').textContent()).toContain('on the server');
  await page.getByRole('link', { name: 'Ask or say something of this job' }).click();
  await expect.poll(() => page.locator('#on-job').textContent()).toContain('On the job Spring list, CR 9');
  const say = async (text: string): Promise<string> => {
    const before = await page.locator('.entry').count();
    await page.waitForTimeout(800);
    await page.locator('#question').fill(text);
    await page.locator('.composer .send').click();
    await expect.poll(() => page.locator('.entry').count()).toBe(before + 1);
    return (await page.locator('.entry').last().textContent()) ?? '';
  };
  expect(await say('we laid 12 tons on patch 2')).toContain('Patch 2: 12.0 tons laid, 12.0 tons down in all');
  await expect.poll(() => page.locator('#on-job').textContent()).toContain('Written last: Load');
  expect(await say('how many tons for 100 x 10 ft at 1 in')).toContain('6.1 tons');
  // Asked again when the page is opened again, it would be written twice.
  await page.reload();
  await page.locator('.entry').first().waitFor();
  // 150 × 12 ft × 1.5 in at 110 lb/yd2/in are 16.5 tons, by hand.
  expect(await say("what's left")).toContain('1 patch (2), 4.5 tons to lay');
  if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/ask-on-job-390.png` });
  expect(await violationsOn(page)).toEqual([]);
  const other = await open(job, 1280);
  await expect.poll(() => other.locator('.patches').textContent(), { timeout: 20_000 }).toContain('down 12.0 tons');
  expect(await say('undo')).toContain('Taken back');
  await other.reload();
  await expect.poll(() => other.locator('.patches').textContent(), { timeout: 20_000 }).not.toContain('down 12.0 tons');
  await other.context().close();
  await page.getByRole('button', { name: 'Leave it' }).click();
  await expect.poll(() => page.locator('#on-job').count()).toBe(0);
  // With no job in hand those of the phone are offered.
  await say('we laid 3 tons on patch 2');
  await page.getByRole('button', { name: 'Spring list, CR 9' }).click();
  await expect.poll(() => page.locator('.entry').last().textContent()).toContain('3.0 tons laid, 3.0 tons down');
  await page.context().close();
});

test('a talk is carried into a job, without script and with it', { timeout: 90_000 }, async () => {
  const bare = await open('/?q=how+many+tons+for+300+x+12+ft+at+2+in', 390, { javaScriptEnabled: false });
  await bare.getByRole('button', { name: 'Put it in a job book' }).click();
  expect(await bare.locator('.notice').textContent()).toContain('1 patch from your questions');
  await bare.getByRole('button', { name: 'Start the job' }).click();
  expect(await bare.locator('main').textContent()).toContain('44.0 tons');
  await bare.context().close();

  const page = await open(job, 390);
  await expect.poll(() => page.locator('#sync').textContent()).toContain('on the server');
  await page.goto(site.address);
  await page.locator('#question').fill('how many tons for 300 x 12 ft at 2 in');
  await page.locator('.composer .send').click();
  await page.locator('.entry').waitFor();
  await page.getByRole('button', { name: 'Put it in a job book' }).click();
  await page.getByRole('button', { name: 'Put them on Spring list, CR 9' }).click();
  await expect.poll(() => page.locator('#sync').textContent(), { timeout: 20_000 }).toContain('on the server');
  expect(await page.locator('.patches').textContent()).toContain('Patch 3');
  await page.context().close();
});
