import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { renderCards } from '../../scripts/cards.mjs';
import { recordIds } from '../../scripts/generate.mjs';
import { cards, wordsOfCards } from '../../src/ask/cards.generated.ts';
import { pairsOf } from './lines.ts';

const root = join(import.meta.dirname, '../..');
const ids = new Set(cards.map(({ id }) => id));

/** Ids that callers rely on: they are never renamed. */
const fixed =
  'emergency-burn emergency-struck-by emergency-rollover emergency-power-line emergency-gas emergency-heat emergency-eye emergency-spill emergency-crash emergency-fire emergency-medical emergency-sting ppe where-to-stand backing crew-briefing locates what-is-blade-patching term-windrow term-tack term-lift term-crown term-moldboard term-turnout term-premix term-distributor hot-or-cold-mix old-stockpile cutback-hazard silica night-work one-flagger pilot-car queue side-roads bridge-deck curb manhole banked-curve steep-grade breakdown-grader breakdown-roller late-trucks ran-out-short leftover-mix rain-on-row leave-overnight open-to-traffic waste-disposal day-record'.split(
    ' ',
  );

describe('the file of cards', () => {
  test('is what content makes it: run npm run generate', async () => {
    for (const [path, text] of Object.entries(await renderCards(root, recordIds)))
      expect(readFileSync(join(root, path), 'utf8')).toBe(text);
  });

  test('has a card for every file of content, and words for every card', () => {
    const files = readdirSync(join(root, 'content')).map((name) => name.replace(/\.md$/, ''));
    expect([...ids].sort()).toEqual(files.sort());
    expect(Object.keys(wordsOfCards).sort()).toEqual(files.sort());
  });

  test('has every card that callers rely on', () => {
    expect(fixed.filter((id) => !ids.has(id))).toEqual([]);
  });
});

describe('no card stands alone', () => {
  const asked = new Set([...pairsOf('queries.txt'), ...pairsOf('emergencies.txt')].map(({ card }) => card));
  const linked = new Set(
    cards.flatMap(({ links }) => links.filter((link) => link.startsWith('card/')).map((link) => link.slice(5))),
  );

  test('a query asks for it, or another card leads to it', () => {
    expect([...ids].filter((id) => !asked.has(id) && !linked.has(id))).toEqual([]);
  });

  test('each bears on a record, or on a card that does', () => {
    const bare = cards.filter(({ links }) => links.every((link) => link.startsWith('card/')));
    const held = (id: string): boolean =>
      cards.some((card) => card.id === id && card.links.some((link) => !link.startsWith('card/')));
    expect(bare.filter(({ links }) => !links.some((link) => held(link.slice(5)))).map(({ id }) => id)).toEqual([]);
  });

  test('no two have one title, and none asks twice in the same words', () => {
    const twice = (list: readonly string[]): string[] => list.filter((each, at) => list.indexOf(each) !== at);
    expect(twice(cards.map(({ title }) => title.toLowerCase()))).toEqual([]);
    expect(cards.filter(({ asks }) => twice([...asks]).length > 0).map(({ id }) => id)).toEqual([]);
  });
});

/** Vowel groups, less a silent e at the end: close enough to compare texts by. */
function syllables(word: string): number {
  const groups = word
    .toLowerCase()
    .replace(/(?:[^laeiouy]es|ed|[^laeiouy]e)$/, '')
    .match(/[aeiouy]{1,4}/g);
  return Math.max(1, groups?.length ?? 0);
}

/** US school grade of a text: J. P. Kincaid and others, Research Branch Report 8-75, Naval Technical Training, 1975. */
function grade(text: string): number {
  const sentences = text.split(/[.?!](?=\s|$)/).filter((each) => /[a-z]/i.test(each));
  const words = text.match(/[a-z'’-]+/gi) ?? [];
  const sounds = words.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (words.length / sentences.length) + 11.8 * (sounds / words.length) - 15.59;
}

describe('cards are in plain words', () => {
  test('the measure tells plain words from others', () => {
    expect(grade('The row is too big. Do not straddle it. Dump it in two goes.')).toBeLessThan(3);
    expect(
      grade('Compaction characteristics deteriorate considerably following environmental precipitation.'),
    ).toBeGreaterThan(12);
  });

  test('a sixth-grader can read them: none above grade eight, and grade six is the most on average', () => {
    const hard = cards.filter(({ text }) => grade(text) > 8).map(({ id, text }) => `${id} ${grade(text).toFixed(1)}`);
    const average = cards.reduce((sum, { text }) => sum + grade(text), 0) / cards.length;
    console.info(`grade ${average.toFixed(1)} on average over ${cards.length} cards`);
    expect(hard).toEqual([]);
    expect(average).toBeLessThanOrEqual(6);
  });

  test('the short answer comes first: the opening sentence has thirty words at most', () => {
    const long = cards.filter(({ text }) => text.split(/[.?!:;]\s/)[0]!.split(/\s+/).length > 30);
    expect(long.map(({ id }) => id)).toEqual([]);
  });
});
