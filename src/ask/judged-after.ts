import { gravityOf, judgeLimit, judgePractice } from '../rules/judge.ts';
import type { PracticeRecord } from '../rules/shapes.ts';
import { whatFollows } from '../rules/start.ts';
import { type Engine, soughtBy } from './engine.ts';
import { type Fact, knownFrom } from './facts.ts';
import type { Goal } from './goal.ts';
import type { Sentence } from './sentence.ts';

/** What was asked before, what the job has, and the turn this question is. */
interface Before {
  readonly goal: Goal | undefined;
  readonly kept: readonly Fact[];
  readonly turn: number;
}

/**
 * "Still brown though", and then "trucks pull on now?": who asks yes or no and names nothing asks about what was told in the
 * turn before. The practice is meant that judges it, or the limit on what was worked out. Undefined where nothing is asked,
 * or nothing of the turn before is judged.
 */
export function judgedAfter(engine: Engine, { places }: Sentence, { goal, kept, turn }: Before): Goal | undefined {
  if (!places.has('@check') || kept.length === 0) return undefined;
  return practiceOn(engine, kept, turn) ?? limitOn(engine, goal, kept);
}

function practiceOn({ knowledge }: Engine, kept: readonly Fact[], turn: number): Goal | undefined {
  const last = new Set(kept.flatMap((fact) => ('choice' in fact && fact.turn === turn - 1 ? [fact.quantity] : [])));
  if (last.size === 0) return undefined;
  const solved = whatFollows(knowledge, knownFrom(kept));
  const rank = (rule: PracticeRecord): number => gravityOf(judgePractice(rule, solved).status);
  const [meant] = [...knowledge.practices.values()]
    .filter((rule) => rule.cues && last.has(rule.on.id) && rank(rule) >= 0)
    .sort((a, b) => rank(a) - rank(b));
  return meant && { kind: 'practice', id: meant.id };
}

function limitOn(engine: Engine, goal: Goal | undefined, kept: readonly Fact[]): Goal | undefined {
  if (goal?.kind !== 'quantity') return undefined;
  const { knowledge } = engine;
  const sought = soughtBy(knowledge, goal);
  const solved = whatFollows(knowledge, knownFrom(kept));
  const meant = [...knowledge.limits.values()].find(
    (rule) => rule.cues && sought.includes(rule.on.id) && gravityOf(judgeLimit(rule, solved).status) >= 0,
  );
  return meant && { kind: 'limit', id: meant.id };
}
