import { gravityOf, judgeLimit, judgePractice } from '../rules/judge.ts';
import { whatFollows } from '../rules/start.ts';
import type { Engine } from './engine.ts';
import { knownFrom } from './facts.ts';
import type { Goal, Scored } from './goal.ts';
import { withJudged } from './judged-figure.ts';
import type { Taken } from './taken.ts';

/** How near a rule must be heard to the one heard best: to stand in for one that cannot be judged, or is broken less. */
const near = { settled: 0.6, graver: 0.8 };
/** Of the rules heard, so many are held against what was said. */
const most = 4;

/**
 * What was found, with the rule first that what was said settles, where the one heard best cannot be judged by it: "the edge
 * drops 3 1/2 in, leave it till tomorrow" judges the drop. Of two heard about as well, the one that is broken worse.
 */
export function settledFirst(engine: Engine, found: readonly Scored[], take: (goal: Goal) => Taken): readonly Scored[] {
  const [best] = found;
  if (!best || !isRule(best)) return found;
  const rivals = found.slice(1).filter((goal) => isRule(goal) && goal.score >= near.settled * best.score);
  if (rivals.length === 0) return found;
  const own = saidOf(engine, best, take);
  if (own.rank === 0) return found;
  // A figure has one meaning: a rule that takes it for something else says no worse.
  const isGraver = (goal: Scored, { rank, from }: Said): boolean =>
    rank < own.rank && goal.score >= near.graver * best.score && (from === undefined || from !== own.from);
  const meant = rivals
    .slice(0, most)
    .map((goal) => ({ goal, said: saidOf(engine, goal, take) }))
    .filter(({ goal, said }) => said.rank >= 0 && (own.rank < 0 || isGraver(goal, said)))
    .sort((a, b) => (own.rank < 0 ? 0 : a.said.rank - b.said.rank))[0]?.goal;
  return meant ? [meant, ...found.filter((goal) => goal !== meant)] : found;
}

const isRule = ({ kind }: Goal): boolean => kind === 'limit' || kind === 'practice';

/** What a rule says: its place among the outcomes, the worst first, less than none where it cannot be judged; and where the figure judged begins. */
interface Said {
  readonly rank: number;
  readonly from?: number | undefined;
}

function saidOf(engine: Engine, goal: Scored, take: (goal: Goal) => Taken): Said {
  const { knowledge } = engine;
  const limit = knowledge.limits.get(goal.id);
  const { facts, fresh } = limit ? withJudged(engine, goal, take(goal)) : take(goal);
  const practice = knowledge.practices.get(goal.id);
  const on = limit?.on.id ?? practice?.on.id;
  const fact = fresh.find(({ quantity }) => quantity === on);
  if (!fact) return { rank: -1 };
  const solved = whatFollows(knowledge, knownFrom(facts));
  const { status } = limit ? judgeLimit(limit, solved) : judgePractice(practice!, solved);
  return { rank: gravityOf(status), from: fact.from?.[0] };
}
