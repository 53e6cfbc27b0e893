import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Reply } from '../../src/ask/reply.ts';
import { convert } from '../../src/calc/quantity.ts';
import type { Unit } from '../../src/calc/units.ts';
import { askings } from './askings.ts';
import { questionsOf } from './composed.ts';
import { soundReply } from './sound.ts';
import { feet, inches, inchesIn } from './spelled.ts';

/**
 * Laws of understanding, over questions put together by chance. `ASK_RUNS=10` runs ten times as many; `ASK_SEED` names
 * the seed, which is printed, so that a run can be had again.
 */
const seed = Number(process.env.ASK_SEED ?? 20260301);
const times = Number(process.env.ASK_RUNS ?? 1);
const runs = (numRuns: number) => ({ numRuns: Math.round(numRuns * times), seed, includeErrorInReport: true });

test('the seed', () => {
  console.info(`properties of understanding: ASK_SEED=${seed} ASK_RUNS=${times}`);
  expect(Number.isSafeInteger(seed)).toBe(true);
});

/** The figure a reply gives for a quantity, in a unit; a reply without it says what came instead. */
function answered(question: string, quantity: string, unit: Unit): number | string {
  const { values, kind, topic, clarify } = ask({ question });
  const value = values.find((each) => each.quantity === quantity);
  return value ? convert(value.number, value.unit, unit) : `${kind} ${topic} ${clarify?.quantity ?? ''}`.trim();
}

const same = (got: number | string, wanted: number): boolean =>
  typeof got === 'number' && Math.abs(got - wanted) <= 1e-6 * Math.abs(wanted);

describe('rewording a figure never changes the answer', () => {
  const templates: readonly (readonly [question: string, quantity: string, unit: Unit])[] = [
    ['how many tons for 300 x 12 ft at #', 'premix-mass', 'ton'],
    ['patch 300 ft long, 12 ft wide, # deep. tons?', 'premix-mass', 'ton'],
    ['# hole, how many lifts', 'lift-count', '1'],
    ['how far will 15 tons go 12 ft wide at #', 'load-length', 'ft'],
  ];
  test.each(templates)('%s', (template, quantity, unit) => {
    const texts = Array.from({ length: 29 }, (_, i) => i + 4).map(inchesIn);
    for (const spellings of texts) {
      const answers = spellings.map((text) => [text, answered(template.replace('#', text), quantity, unit)] as const);
      const [first] = answers;
      const apart = answers.filter(([, answer]) => typeof first![1] === 'string' || !same(answer, first![1]));
      expect(apart, `${first!.join(': ')} tells otherwise`).toEqual([]);
    }
  });
});

test('the order of the facts never changes the answer', () => {
  const told = fc.record({ long: feet(20, 2000), wide: feet(6, 19), deep: inches(4, 32) });
  fc.assert(
    fc.property(told, ({ long, wide, deep }) => {
      const facts = [`${long.text} long`, `${wide.text} wide`, `${deep.text} deep`] as const;
      const orders = [
        [0, 1, 2],
        [0, 2, 1],
        [1, 0, 2],
        [1, 2, 0],
        [2, 0, 1],
        [2, 1, 0],
      ] as const;
      for (const order of orders) {
        const said = order.map((i) => facts[i]).join(', ');
        for (const question of [`how many tons for ${said}`, `${said}, how many tons`]) {
          const wanted = ((long.value * wide.value) / 9) * deep.value * 0.055;
          expect({ question, same: same(answered(question, 'premix-mass', 'ton'), wanted) }).toEqual({
            question,
            same: true,
          });
        }
      }
    }),
    runs(60),
  );
});

describe('a question put together from its parts is answered with the number worked out by hand', () => {
  test.each(askings)('$quantity', (asking) => {
    fc.assert(
      fc.property(questionsOf(asking), ({ question, wanted }) => {
        const got = answered(question, asking.quantity, asking.unit);
        if (!same(got, wanted)) throw new Error(`${question} → ${got}, not ${wanted}`);
      }),
      runs(2000 / askings.length),
    );
  });
});

describe('whatever is typed', () => {
  const lines = readFileSync(new URL('../corpus/questions.txt', import.meta.url), 'utf8')
    .split('\n')
    .filter(Boolean);
  const odd = [
    '½',
    '1⁄2',
    '′',
    '”',
    '×',
    '−',
    '\u00a0',
    '12',
    '0',
    '-',
    '.',
    ',',
    '1e9',
    '"',
    '%',
    'ton',
    'in',
    ' x ',
    '1:1',
    '\u202e',
    '🚧',
    '\n',
    '999999999999',
    '/',
    'ñ',
    'why ',
    'same but ',
    'is ',
    'NaN',
    '__proto__',
    'constructor',
  ];
  const mutated = fc
    .tuple(
      fc.constantFrom(...lines),
      fc.array(fc.tuple(fc.nat({ max: 80 }), fc.nat({ max: 3 }), fc.constantFrom(...odd)), {
        minLength: 1,
        maxLength: 6,
      }),
    )
    .map(([line, edits]) =>
      edits.reduce((text, [at, drop, put]) => text.slice(0, at) + put + text.slice(at + drop), line),
    );
  const spliced = fc
    .tuple(fc.constantFrom(...lines), fc.constantFrom(...lines), fc.nat({ max: 60 }))
    .map(([a, b, at]) => a.slice(0, at) + b.slice(at));
  const random = fc.string({ unit: 'grapheme', maxLength: 120 });
  const words = fc
    .array(fc.constantFrom(...lines.join(' ').split(' ')), { maxLength: 25 })
    .map((list) => list.join(' '));
  const typed = fc.oneof(mutated, spliced, random, words);

  /** Most that an answer may take, in milliseconds, on a machine that is busy with other work too. */
  const most = 20;

  test('nothing throws, is no number, is slow, or rests on what was not said', () => {
    for (const line of lines) ask({ question: line });
    fc.assert(
      fc.property(typed, (question) => {
        const { reply, took } = timed(question, most);
        soundReply(reply, question);
        for (const each of reply.given) {
          if ('from' in each)
            expect(question.slice(...each.from), `where ${each.quantity} ${each.number} ${each.unit} was read`).toMatch(
              saysFigure,
            );
        }
        // A quiz is a whole set of questions, each with its own figures worked out.
        if (took > most && !/quiz|question/i.test(question)) throw new Error(`took ${took} ms`);
      }),
      runs(20_000),
    );
  }, 600_000);

  test('a talk of random turns holds as well', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(mutated, fc.constantFrom(...lines)), { minLength: 2, maxLength: 6 }),
        (questions) => {
          let job: Reply['job'] | undefined;
          for (const question of questions) {
            const reply = ask({ question, ...(job ? { job } : {}) });
            soundReply(reply, question);
            expect(JSON.stringify(reply.job).length).toBeLessThanOrEqual(16 * 1024);
            job = JSON.parse(JSON.stringify(reply.job));
          }
        },
      ),
      runs(1000),
    );
  }, 600_000);
});

/** A figure stands where it is said to have been read: digits, a sign for a fraction, or a word for a number. */
const saysFigure =
  /[\d¼½¾⅐-⅞↉]|\b(?:an?|half|halves|quarters?|thirds?|eighths?|inch|foot|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|teens?|thirteen|fifteen|[a-z]{3,6}teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|dozen|couple|zero|point|oh|un|una|uno|dos|tres|media|medio|cuarto|pulgada|pair|double|twice|single|once|both|mile|yard|pie|per|undiluted|straight)\b/iu;

/** An answer and how long it took: the shortest of a few tries, for a busy machine may stall on any one. */
function timed(question: string, most: number): { reply: Reply; took: number } {
  let took = Number.POSITIVE_INFINITY;
  let reply: Reply | undefined;
  for (let tries = 0; tries < 20 && took > most; tries++) {
    const start = performance.now();
    reply = ask({ question });
    took = Math.min(took, performance.now() - start);
  }
  return { reply: reply!, took };
}
