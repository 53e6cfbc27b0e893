import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bent } from './bent.ts';
import { type Door, doors } from './doors.ts';
import { agencyFiles, changes, ratesFile } from './files.ts';
import { forgedJobs } from './jobs.ts';
import { lists, surveys } from './pasted.ts';
import { questions, typed } from './typed.ts';
import { wholeCsv } from './whole.ts';

/**
 * Whatever comes in through any door: nothing throws, no figure is none, nothing takes long. `FUZZ=1000000` runs that many
 * cases in all; `FUZZ_SEED` names the seed, which is printed, so that a run can be had again.
 */
const total = Number(process.env.FUZZ ?? 8000);
const seed = Number(process.env.FUZZ_SEED ?? 20260401);

interface Way {
  /** Of a thousand cases, how many go this way. */
  readonly share: number;
  readonly cases: fc.Arbitrary<unknown>;
  /** Most milliseconds for a case of it: the least of a few tries, for a busy machine stalls any one. */
  readonly most: number;
}

const files = fc.constantFrom(...agencyFiles).chain(bent);
const rates = bent(ratesFile);
const asked = fc.oneof({ weight: 4, arbitrary: typed }, { weight: 1, arbitrary: fc.constantFrom(...questions) });
const money = fc.constantFrom(
  'what does a grader 8331 and a roller 8222 cost for 6 hours',
  'cost of two rollers and a 12 ft grader',
  'cost per ton at $85 a ton',
);
const ways: Readonly<Record<Door, Way>> = {
  reader: { share: 350, cases: typed, most: 10 },
  ask: { share: 200, cases: typed, most: 60 },
  talk: { share: 15, cases: fc.array(asked, { minLength: 2, maxLength: 5 }), most: 200 },
  job: { share: 60, cases: fc.record({ question: asked, job: forgedJobs }), most: 40 },
  agency: { share: 100, cases: files, most: 5 },
  ruled: { share: 1, cases: fc.record({ question: asked, agency: files }), most: 1500 },
  rates: { share: 60, cases: rates, most: 5 },
  priced: { share: 14, cases: fc.record({ question: fc.oneof(money, asked), rates }), most: 40 },
  list: { share: 50, cases: lists, most: 400 },
  csv: { share: 30, cases: wholeCsv, most: 10 },
  book: { share: 20, cases: bent(changes).filter(Array.isArray), most: 250 },
  json: {
    share: 20,
    cases: fc.oneof(
      bent({ jobBook: 1, changes }).map((value) => JSON.stringify(value) ?? ''),
      typed,
    ),
    most: 10,
  },
  survey: { share: 80, cases: fc.oneof(surveys, typed), most: 10 },
};

function held(door: Door, sent: unknown, most: number): void {
  let took = Number.POSITIVE_INFINITY;
  for (let tries = 0; tries < 20 && took > most; tries++) {
    const start = performance.now();
    (doors[door] as (sent: unknown) => void)(sent);
    took = Math.min(took, performance.now() - start);
  }
  // A quiz is a whole set of questions, each with its own figures worked out.
  if (took > most && !/quiz|question|test me/i.test(JSON.stringify(sent)))
    throw new Error(`took ${took.toFixed(1)} ms, over ${most}`);
}

test('the ways together are all the cases', () => {
  console.info(`whatever comes in: FUZZ=${total} FUZZ_SEED=${seed}`);
  expect(Object.values(ways).reduce((sum, { share }) => sum + share, 0)).toBe(1000);
});

describe('whatever comes in', () => {
  test.each(Object.entries(ways))('through %s', { timeout: 60_000 + total * 20 }, (door, { share, cases, most }) => {
    for (const question of questions.slice(0, 60)) doors.ask(question);
    fc.assert(
      fc.property(cases, (sent) => held(door as Door, sent, most)),
      { numRuns: Math.max(1, Math.round((total * share) / 1000)), seed, includeErrorInReport: true },
    );
  });
});

/** Every case that was once found, kept for good. */
const found = readFileSync(new URL('../corpus/found.jsonl', import.meta.url), 'utf8')
  .split('\n')
  .filter(Boolean)
  .map((line) => JSON.parse(line) as { door: Door; sent: unknown; was: string });

test.each(found)('found before, through $door: $was', ({ door, sent }) => {
  held(door, sent, ways[door].most);
});
