import { boundsOf, judgeLimit } from '../rules/judge.ts';
import type { LimitRecord } from '../rules/shapes.ts';
import { whatFollows } from '../rules/start.ts';

import { type Engine, soughtBy } from './engine.ts';
import { knownFrom } from './facts.ts';
import type { Goal } from './goal.ts';
import { withJudged } from './judged-figure.ts';
import type { Sentence } from './sentence.ts';
import type { Taken } from './taken.ts';
import { namesIn, type Titles } from './titles.ts';

const settles = new Set(['ok', 'caution', 'stop']);

/** True where what was taken settles a limit. */
export function isSettled(engine: Engine, rule: LimitRecord, taken: Taken): boolean {
  const { facts } = withJudged(engine, { kind: 'limit', id: rule.id }, taken);
  const solved = whatFollows(engine.knowledge, knownFrom(facts));
  return settles.has(judgeLimit(rule, solved).status);
}

/** Words that ask for a figure or an account. */
const asking =
  'how-many how-far how-fast how what which where when why need figure who min max thinnest thickest biggest largest shortest longest best'.split(
    ' ',
  );

/** True for a sentence that asks nothing: "merge taper 300 ft at 40 mph, 12 ft lane". */
export const isStatement = ({ places, tokens }: Sentence): boolean =>
  !asking.some((word) => places.has(word)) && !tokens.some((token) => token.kind === 'mark' && token.text === '?');

/** True for one that asks nothing but by the names of its figures: "tack needed 1200 gal, original emulsion 900 gal". */
export const saysOnly = (sentence: Sentence, titles: Titles): boolean => {
  if (isStatement(sentence)) return true;
  const named = namesIn(sentence, titles);
  return (
    named.size > 0 &&
    asking.every((word) => (sentence.places.get(word) ?? []).every((at) => named.has(at))) &&
    !sentence.tokens.some((token) => token.kind === 'mark' && token.text === '?')
  );
};

/**
 * "Left 620 ft of buffer on a 60 mph highway" asks nothing, or yes or no, and gives the figure for the very thing it speaks
 * of: the limit that holds such a figure against the one found is meant. Undefined where it asks, or gives no such figure.
 */
export function statedLimit(
  engine: Engine,
  sentence: Sentence,
  goal: Goal | undefined,
  take: (goal: Goal) => Taken,
): Goal | undefined {
  if (goal?.kind !== 'quantity' || sentence.figures.length === 0) return undefined;
  if (!isStatement(sentence) && !sentence.places.has('@check')) return undefined;
  const { quantities, records } = engine.knowledge;
  const sought = new Set(quantities.get(goal.id)?.standsIn ? soughtBy(engine.knowledge, goal) : [goal.id]);
  const isMeant = (id: string): boolean =>
    sought.has(id) ||
    (quantities.get(id)?.standsIn === true && soughtBy(engine.knowledge, { kind: 'quantity', id }).includes(goal.id));
  const meant = records.limits.find((rule) => {
    if (!rule.cues) return false;
    const bounds = boundsOf(rule);
    if (!isMeant(rule.on.id) && !bounds.some(isMeant)) return false;
    const meant: Goal = { kind: 'limit', id: rule.id };
    const taken = take(meant);
    const { told } = taken;
    if (!told.has(rule.on.id) && !bounds.some((id) => isMeant(id) && told.has(id) && !quantities.get(id)?.default))
      return false;
    return isSettled(engine, rule, taken);
  });
  return meant && { kind: 'limit', id: meant.id };
}
