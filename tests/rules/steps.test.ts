import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figuresIn } from '../../src/ask/clauses.ts';
import { readJob } from '../../src/ask/job.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import {
  type Entry,
  layingOf,
  mostLifts,
  nextAfter,
  readStage,
  sequence,
  stageText,
} from '../../src/rules/procedure.ts';
import { work } from '../../src/rules/work.ts';

/** The stages of the job in order, each once; a lift is laid and rolled before the next. Source: practice of the craft. */
const stages =
  'survey-and-mark order-and-check brief-crew traffic-control-up cut-and-clean sweep tack spread-premix windrow first-lift roll-lift next-lift finish-lift final-roll clean-up traffic-control-down record'.split(
    ' ',
  );

const lifted = (entries: readonly Entry[]): string[] =>
  entries.filter(({ id }) => /lift|final-roll/.test(id)).map(({ id, lift }) => (lift ? `${id} ${lift}` : id));
const counts = fc.integer({ min: 1, max: mostLifts });

describe('the sequence', () => {
  test('without a count every stage stands once, in order', () => {
    expect(sequence().map(({ id }) => id)).toEqual(stages);
  });

  test.each([
    [1, ['finish-lift 1', 'final-roll']],
    [2, ['first-lift 1', 'roll-lift 1', 'finish-lift 2', 'final-roll']],
    [3, ['first-lift 1', 'roll-lift 1', 'next-lift 2', 'roll-lift 2', 'finish-lift 3', 'final-roll']],
    [
      5,
      [
        'first-lift 1',
        'roll-lift 1',
        'next-lift 2',
        'roll-lift 2',
        'next-lift 3',
        'roll-lift 3',
        'next-lift 4',
        'roll-lift 4',
        'finish-lift 5',
        'final-roll',
      ],
    ],
  ])('of %i lifts lays each, and rolls it before the next', (count, expected) => {
    expect(lifted(sequence(count))).toEqual(expected);
  });

  test('what is laid is rolled next, whatever the count', () => {
    fc.assert(
      fc.property(counts, (count) => {
        const entries = sequence(count);
        entries.forEach(({ id, lift }, i) => {
          if (id === 'first-lift' || id === 'next-lift') expect(entries[i + 1]).toEqual({ id: 'roll-lift', lift });
          if (id === 'finish-lift') expect(entries[i + 1]).toEqual({ id: 'final-roll' });
        });
        expect(entries.filter(({ id }) => /^(?:first|next|finish)-lift$/.test(id))).toHaveLength(count);
      }),
    );
  });

  test('traffic control is up before anyone cuts, and down only after clean-up', () => {
    fc.assert(
      fc.property(counts, (count) => {
        const ids = sequence(count).map(({ id }) => id);
        expect(ids.indexOf('traffic-control-up')).toBeLessThan(ids.indexOf('cut-and-clean'));
        expect(ids.indexOf('traffic-control-down')).toBeGreaterThan(ids.indexOf('clean-up'));
      }),
    );
  });

  test.each([0, -1, 1.5, Number.NaN, mostLifts + 1])('refuses %s lifts with what to give', (count) => {
    expect(() => sequence(count)).toThrow(/whole number/);
  });
});

describe('what comes next', () => {
  test('walks every entry of every job once', () => {
    fc.assert(
      fc.property(counts, (count) => {
        const walked: Entry[] = [{ id: 'survey-and-mark' }];
        for (;;) {
          const next = nextAfter(walked.at(-1)!, count);
          if (typeof next === 'string') {
            expect(next).toBe('done');
            break;
          }
          walked.push(next.entry);
        }
        expect(walked).toEqual(sequence(count));
      }),
    );
  });

  test('without a count what is laid is rolled, and the next lift cannot be told', () => {
    expect(nextAfter({ id: 'first-lift', lift: 1 })).toEqual({ entry: { id: 'roll-lift', lift: 1 } });
    expect(nextAfter({ id: 'next-lift', lift: 4 })).toEqual({ entry: { id: 'roll-lift', lift: 4 } });
    expect(nextAfter({ id: 'windrow' })).toBe('needs-lift-count');
    expect(nextAfter({ id: 'roll-lift', lift: 2 })).toBe('needs-lift-count');
  });

  test('a lift that the patch has not is no stage', () => {
    expect(nextAfter({ id: 'roll-lift', lift: 7 }, 3)).toBe('no-such-stage');
    expect(layingOf(4, 3)).toBeUndefined();
    expect(layingOf(2, 2)).toEqual({ id: 'finish-lift', lift: 2 });
  });

  test('a stage survives the job that carries it', () => {
    for (const entry of sequence(mostLifts)) {
      const stage = stageText(entry);
      expect(readStage(readJob({ v: 1, turn: 1, facts: [], stage })?.stage)).toEqual(entry);
    }
  });

  test.each(['', 'lunch', 'roll-lift:', 'roll-lift:x', 'Tack', undefined])('%j is no stage', (text) => {
    expect(readStage(text)).toBeUndefined();
  });
});

describe('step records', () => {
  const records = [...work.steps.values()].map((record) => [record.id, record] as const);

  test('there is one for every stage, and no other', () => {
    expect([...work.steps.keys()].sort()).toEqual([...stages].sort());
  });

  test.each(records)('%s rests on rules that there are', (_, { rules, before = [] }) => {
    const named = [...rules, ...before.map(({ rule }) => rule)];
    expect(named.filter((rule) => !knowledge.limits.has(rule) && !knowledge.practices.has(rule))).toEqual([]);
  });

  test.each(records)(
    '%s says no figure outside a clause that can fall away',
    (_, { text, also = [], checks, craft = [], good }) => {
      const sentences = [text, ...also.map((each) => each.text), ...checks, ...craft.map((each) => each.text), good];
      expect(sentences.flatMap((sentence) => figuresIn(sentence.replace(/\[\[[^\]]*\]\]/g, '')))).toEqual([]);
      expect(sentences.filter((sentence) => /\[\[|\]\]/.test(sentence.replace(/\[\[[^[\]]{1,400}\]\]/g, '')))).toEqual(
        [],
      );
    },
  );

  test.each(records)('%s warns of a way to get hurt', (_, { cautions }) => {
    expect(cautions.length).toBeGreaterThan(0);
  });

  test.each(records)('%s needs only what a choice can settle', (_, { before = [] }) => {
    for (const { met } of before)
      expect(met.choice.options.map(({ id }) => id)).toEqual(expect.arrayContaining([...met.is]));
  });
});
