import type { BrowserContext, CDPSession, Page } from 'playwright-core';
import { openBrowser } from '../../tests/site/browser.ts';
import { type Figures, median, ms } from './measure.ts';
import { startServer } from './process.ts';
import { typicalQuestion } from './questions.ts';

/** An old phone with poor signal: a quarter of this machine's speed, 400 kbit/s each way, 400 ms there and back. */
const slower = 4;
const network = { offline: false, latency: 400, downloadThroughput: 400_000 / 8, uploadThroughput: 400_000 / 8 };
const visits = 5;
const answers = 15;

/** A phone's first visit, its next one, and an answer on it, slowed down through the browser's own protocol. */
export async function run(): Promise<Figures> {
  const server = await startServer(['scripts/run.mjs', 'start']);
  const browser = await openBrowser();
  try {
    const address = `http://127.0.0.1:${server.port}`;
    const first: Visit[] = [];
    const again: Visit[] = [];
    const times: number[] = [];
    const shifts: number[] = [];
    for (let round = 0; round < visits; round++) {
      const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
      const one = await visit(context, address);
      first.push(one.seen);
      await one.page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
      await until(one.page, 'navigator.serviceWorker.controller !== null');
      await one.page.close();
      const two = await visit(context, address);
      again.push(two.seen);
      if (round === 0) times.push(...(await answerTimes(two.page, two.protocol)));
      shifts.push(await two.page.evaluate<number>('shifted'));
      await context.close();
    }
    const of = (some: readonly Visit[], part: keyof Visit) => ms(median(some.map((seen) => seen[part])));
    return {
      'first visit, form usable': of(first, 'form'),
      'first visit, script ready': of(first, 'script'),
      'first visit, answers by itself': of(first, 'engine'),
      'next visit, form usable': of(again, 'form'),
      'next visit, script ready': of(again, 'script'),
      'next visit, answers by itself': of(again, 'engine'),
      'answer, main thread': ms(median(times)),
      'answer, main thread, quickest': ms(Math.min(...times)),
      'layout shift of a visit with answers': { value: Math.max(...shifts), unit: '' },
    };
  } finally {
    await browser.close();
    await server.stop();
  }
}

/** Milliseconds from the start of the visit. */
interface Visit {
  /** The form is painted: it can be filled in and sent, script or none. */
  readonly form: number;
  readonly script: number;
  readonly engine: number;
}

async function visit(
  context: BrowserContext,
  address: string,
): Promise<{ page: Page; protocol: CDPSession; seen: Visit }> {
  const page = await context.newPage();
  const protocol = await context.newCDPSession(page);
  await protocol.send('Network.enable');
  await protocol.send('Network.emulateNetworkConditions', network);
  await protocol.send('Emulation.setCPUThrottlingRate', { rate: slower });
  await page.addInitScript(`
    window.shifted = 0;
    new PerformanceObserver((list) => { for (const { value, hadRecentInput } of list.getEntries()) if (!hadRecentInput) window.shifted += value; })
      .observe({ type: 'layout-shift', buffered: true });
  `);
  await page.goto(address);
  await until(page, `performance.getEntriesByName('answers ready').length > 0`);
  const seen = await page.evaluate<Visit>(`({
    form: performance.getEntriesByName('first-contentful-paint')[0].startTime,
    script: performance.getEntriesByName('script ready')[0].startTime,
    engine: performance.getEntriesByName('answers ready')[0].startTime,
  })`);
  return { page, protocol, seen };
}

/** Time that the main thread is at work from the press of Send until the answer stands there, for each of some questions. */
async function answerTimes(page: Page, protocol: CDPSession): Promise<number[]> {
  await protocol.send('Performance.enable');
  const busy = async () => {
    const { metrics } = await protocol.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'TaskDuration')!.value * 1000;
  };
  const times: number[] = [];
  for (let at = -2; at < answers; at++) {
    await page.locator('#question').fill(typicalQuestion);
    await page.waitForTimeout(600); // Presses nearer together than this are taken for one.
    const [before, entries] = [await busy(), await page.locator('.entry').count()];
    await page.keyboard.press('Enter');
    await until(page, `document.querySelectorAll('.entry').length > ${entries}`);
    if (at >= 0) times.push((await busy()) - before);
  }
  return times;
}

/** Asked from outside, since the page allows no text to be run as script. */
async function until(page: Page, condition: string): Promise<void> {
  for (let tries = 0; tries < 600; tries++) {
    if (await page.evaluate<boolean>(condition)) return;
    await page.waitForTimeout(100);
  }
  throw new Error(`The page did not come to this in a minute: ${condition}`);
}
