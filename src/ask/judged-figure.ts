import { restsOn } from '../calc/solve.ts';
import { boundsOf } from '../rules/judge.ts';
import { isSaidLike, type Knowledge } from '../rules/knowledge.ts';
import type { LimitRecord } from '../rules/shapes.ts';
import { whatFollows } from '../rules/start.ts';
import type { Engine } from './engine.ts';
import { type Fact, knownFrom } from './facts.ts';
import type { Goal } from './goal.ts';
import type { Taken } from './taken.ts';

/**
 * The figure that a limit is to judge, where it was taken for another of its kind: "1 1/4 rolled on this lift, too thick?"
 * means the lift. Where what the limit is on would be worked out from the limit's own bound, it would hold whatever was
 * said, and say nothing.
 */
export function withJudged(engine: Engine, goal: Goal | undefined, taken: Taken): Taken {
  const { knowledge } = engine;
  if (goal?.kind === 'quantity') return withBound(engine, goal, taken);
  const rule = goal?.kind === 'limit' ? knowledge.limits.get(goal.id) : undefined;
  if (!rule || taken.facts.some(({ quantity }) => quantity === rule.on.id)) return taken;
  const [alike, ...more] = taken.fresh.filter(({ quantity }) => isSaidLike(knowledge, quantity, rule.on.id));
  if (alike && more.length === 0) return moved(taken, alike, rule.on.id);
  const ownBound = givenForBound(knowledge, rule, taken);
  if (ownBound) return moved(taken, ownBound, rule.on.id);
  const solved = whatFollows(knowledge, knownFrom(taken.facts));
  const on = solved.get(rule.on.id);
  const bounds = [rule.max, rule.min].flatMap((bound) => (bound && 'id' in bound ? [bound.id] : []));
  if (!on?.by || !bounds.some((bound) => on.assumed.includes(bound))) return taken;
  const rests = restsOn(solved, [rule.on.id]);
  const [meant, ...others] = taken.fresh.filter(
    ({ quantity }) =>
      rests.has(quantity) &&
      knowledge.quantities.get(quantity)?.dimension === knowledge.quantities.get(rule.on.id)?.dimension,
  );
  if (!meant || others.length > 0) return taken;
  return moved(taken, meant, rule.on.id);
}

/** The figures taken, with one of them taken for another quantity. */
function moved(taken: Taken, fact: Fact, quantity: string): Taken {
  const swap = (facts: Taken['facts']) => facts.map((each) => (each === fact ? { ...fact, quantity } : each));
  return { ...taken, fresh: swap(taken.fresh), facts: swap(taken.facts) };
}

/** "Shoulder taper 150 ft, long enough?": the figure given for what the limit works out itself is the one it is to judge. */
function givenForBound(knowledge: Knowledge, rule: LimitRecord, { fresh, facts }: Taken): Fact | undefined {
  const bounds = boundsOf(rule);
  return fresh.find((fact) => {
    if (!bounds.includes(fact.quantity)) return false;
    const others = facts.filter((each) => each !== fact);
    return Boolean(whatFollows(knowledge, knownFrom(others)).get(fact.quantity)?.by);
  });
}

/**
 * "Buffer 360, flagger taper 100, patch 400: sign to sign" tells how long the buffer is to be, and nobody's judgement is
 * asked: where what is sought rests on the bound that a limit works out, and not on what it judges, the figure is of the bound.
 */
function withBound({ knowledge, near }: Engine, goal: Goal, taken: Taken): Taken {
  const { quantities, records } = knowledge;
  const steps = near(goal);
  let now = taken;
  const given = new Set(taken.fresh.map(({ quantity }) => quantity));
  for (const rule of records.limits) {
    if (!given.has(rule.on.id)) continue;
    const fact = now.fresh.find(({ quantity }) => quantity === rule.on.id);
    if (!fact || steps.has(rule.on.id)) continue;
    const [bound, ...others] = boundsOf(rule).filter(
      (id) => (steps.get(id) ?? 0) > 0 && quantities.get(id)?.default === undefined,
    );
    if (bound === undefined || others.length > 0 || now.facts.some(({ quantity }) => quantity === bound)) continue;
    now = moved(now, fact, bound);
    given.add(bound);
  }
  return now;
}
