import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { appOnStore } from './app-on-store.ts';
import { formulasIn, wrongIn } from './harmless.ts';
import { doorsOf } from './hostile-doors.ts';

/**
 * Every text of a corpus of hostile ones through every door, into every page and file that shows it: nothing breaks, nothing
 * of it becomes mark-up, a header or a formula.
 */
const texts = readFileSync(new URL('../corpus/hostile.jsonl', import.meta.url), 'utf8')
  .split('\n')
  .filter(Boolean)
  .map((line) => JSON.parse(line) as string);

const { app, reports } = appOnStore();

const doors = doorsOf(app);

/** Each door gets a share of the texts, each another one; `HOSTILE=all` gives all of them to every door. */
const shareOf = (door: string): string[] => {
  const turn = Object.keys(doors).indexOf(door);
  return process.env.HOSTILE === 'all' ? texts : texts.filter((_, at) => at < 3 || at % 8 === turn % 8);
};

describe.each(Object.entries(doors))('%s', (name, door) => {
  test('takes every hostile text', { timeout: 900_000 }, async () => {
    for (const text of shareOf(name)) {
      reports.length = 0;
      const wrong: string[] = [];
      for (const response of await door(text)) {
        if (response.status >= 500) wrong.push(`status ${response.status}`);
        if (response.headers.get('Set-Cookie') !== null || response.headers.get('X-Evil') !== null)
          wrong.push('a header of its own');
        const type = response.headers.get('Content-Type') ?? '';
        const policy = response.headers.get('Content-Security-Policy') ?? '';
        if (!policy.includes("default-src 'none'") || policy.includes('unsafe')) wrong.push(`policy ${policy}`);
        if (response.headers.get('X-Content-Type-Options') !== 'nosniff') wrong.push('no nosniff');
        const body = await response.text();
        if (type.startsWith('text/html')) wrong.push(...wrongIn(body));
        else if (type.startsWith('text/csv')) wrong.push(...formulasIn(body).map((cell) => `formula ${cell}`));
        else if (type.includes('json')) JSON.parse(body);
      }
      expect({ text: text.slice(0, 60), wrong: [...new Set(wrong)], reports }).toEqual({
        text: text.slice(0, 60),
        wrong: [],
        reports: [],
      });
    }
  });
});
