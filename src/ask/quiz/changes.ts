import type { Knowledge } from '../../rules/knowledge.ts';
import type { QuizItem } from '../reply.ts';
import type { QuizSet } from './build.ts';
import { streamOf, triesAgain } from './maker.ts';
import { poolOf } from './pool.ts';
import type { Draft, Form, Point } from './shapes.ts';
import { markOf } from './tokens.ts';

/** What the rules now make of an item: the same, another answer or reason, or nothing any more. */
export type Standing = 'same' | 'changed' | 'gone';

/**
 * Holds a kept set against the rules as they are now, item by item in the order of the set: each is drawn again from the
 * seed in its own form, and its question, answer and reason are compared.
 */
export function standingOf(knowledge: Knowledge, set: QuizSet): Standing[] {
  const salts = [...new Set([set.variant, 'A'])].map((variant) => `${set.seed}|${variant}`);
  const salt = salts[0]!;
  const asked = new Map<string, Asked>();
  for (const point of poolOf(knowledge, set.blueprint.units))
    for (const form of point.forms) asked.set(markOf(salt, point, form), { point, form });
  return set.items.map((item) => {
    const found = asked.get(item.id.replace(/^q[0-9]{1,3}-/, ''));
    if (!found) return 'gone';
    const drawn = salts.map((each) => drawnAgain(each, found, item)).find(Boolean);
    return drawn && isSame(drawn, item) ? 'same' : 'changed';
  });
}

interface Asked {
  readonly point: Point;
  readonly form: Form;
}

/** The draft with the same question, where one of the draws comes to it. */
function drawnAgain(salt: string, asked: Asked, item: QuizItem): Draft['item'] | undefined {
  for (let at = 0; at < triesAgain; at++) {
    for (const place of item.kind === 'one' ? [0, 1, 2, 3] : [0]) {
      for (const yes of item.kind === 'true-false' ? [true, false] : [true]) {
        const again = asked.form.make(streamOf(salt, asked, at), { yes, place });
        if (again?.item.stem === item.stem && optionsOf(again.item) === optionsOf(item)) return again.item;
      }
    }
  }
  return undefined;
}

const optionsOf = ({ options }: Pick<QuizItem, 'options'>): string =>
  JSON.stringify(options.map(({ text }) => text).sort());

const isSame = (now: Draft['item'], then: QuizItem): boolean =>
  JSON.stringify([keyOf(now), now.tolerance, now.why]) === JSON.stringify([keyOf(then), then.tolerance, then.why]);

const keyOf = ({ key, kind }: Pick<QuizItem, 'key' | 'kind'>): unknown =>
  kind === 'many' && typeof key === 'object' ? [...key].sort() : key;
