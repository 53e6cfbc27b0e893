import { Desk } from './desk.ts';
import { engine } from './engine.ts';
import { showPlace, startPlace } from './places.ts';
import { startReading, startSymbols } from './reading.ts';
import { startUpkeep } from './upkeep.ts';

/** Begins on every page. What is not on the page is not started. */
async function start(): Promise<void> {
  if (document.documentElement.dataset.page === 'shell') await showPlace();
  startReading();
  await startPlace();
  const form = document.querySelector<HTMLFormElement>('form#ask');
  const box = document.querySelector<HTMLTextAreaElement>('#question');
  if (form && box) {
    startSymbols(form, box);
    const desk = new Desk(form, box);
    desk.listen();
    performance.mark('script ready');
    await desk.open();
  }
  // After what the reader waits for: what answers, then what keeps the page for the road.
  const loaded = await engine();
  performance.mark('answers ready');
  await loaded?.moreParts().catch(() => {});
  await startUpkeep();
}

void start();
