import { Desk } from './desk.ts';
import { engine } from './engine.ts';
import { showPlace } from './places.ts';
import { startReading, startSymbols } from './reading.ts';
import { startUpkeep } from './upkeep.ts';

/** Begins on every page. What is not on the page is not started. */
async function start(): Promise<void> {
  startReading();
  if (document.documentElement.dataset.page === 'shell') await showPlace();
  const form = document.querySelector<HTMLFormElement>('form#ask');
  const box = document.querySelector<HTMLInputElement>('#question');
  if (form && box) {
    startSymbols(box);
    await new Desk(form, box).open();
  }
  // After what the reader waits for: what answers, then what keeps the page for the road.
  await engine();
  await startUpkeep();
}

void start();
