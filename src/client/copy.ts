import * as kept from './kept.ts';
import { say } from './status.ts';
import { en } from './wording/en.ts';

/** What a saved file is known by. */
export const copyMark = 'bladehand kept';
export const copyVersion = 1;

/** Saves all that is kept here to a file; also what the browser would not keep, as long as the page stands. */
export async function saveCopy(): Promise<void> {
  const records = await kept.all();
  const text = JSON.stringify({
    is: copyMark,
    v: copyVersion,
    rules: document.documentElement.dataset.rules,
    kept: records,
  });
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = en.exportName(new Date().toISOString().slice(0, 10));
  link.click();
  URL.revokeObjectURL(link.href);
  say(en.exported(records.length));
}
