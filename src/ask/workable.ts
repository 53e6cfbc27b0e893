import { restsOn } from '../calc/solve.ts';
import { whatFollows } from '../rules/start.ts';
import type { Cue } from './cue.ts';
import type { Engine } from './engine.ts';
import { knownFrom } from './facts.ts';
import type { Goal, Scored } from './goal.ts';
import type { Taken } from './taken.ts';

/** What is heard this much less clearly than the best is still looked at. */
const nearly = 9;

/**
 * The goal itself where the figures given lead to it, or where nothing else does; else the next best one heard that they
 * do lead to: "3 trucks of 14 tons, 50 min round trip, how many tons an hour" is no call for the trucks needed.
 */
export function workable(
  { knowledge }: Engine,
  best: Scored | undefined,
  heard: readonly Scored[],
  take: (goal: Goal, cue: Cue) => Taken,
): Scored | undefined {
  if (best?.kind !== 'quantity') return best;
  const others = heard.filter(
    ({ kind, id, score }) => kind === 'quantity' && id !== best.id && score >= best.score - nearly,
  );
  if (others.length === 0) return best;
  const own = ledTo(best);
  if (own !== undefined) return dearer(own) ?? best;
  const led = others
    .map((goal) => ({ goal, used: ledTo(goal) ?? 0 }))
    .filter(({ used }) => used > 1)
    .sort((a, b) => b.used - a.used);
  return led[0]?.goal ?? best;

  /** "300 tons at 62 a ton and 5 men at 28 an hour, cost" is of all that was given a price, not of the mix alone. */
  function dearer(own: number): Scored | undefined {
    const isMoney = ({ id }: Goal): boolean => knowledge.quantities.get(id)?.dimension === 'money';
    return isMoney(best!) ? others.find((goal) => isMoney(goal) && (ledTo(goal) ?? 0) > own) : undefined;
  }

  /** How many of the figures given a goal is worked out from; undefined where it cannot be. */
  function ledTo(goal: Scored): number | undefined {
    const { facts } = take(goal, goal.cue);
    const solved = whatFollows(knowledge, knownFrom(facts));
    if (!solved.get(goal.id)?.by) return undefined;
    const rests = restsOn(solved, [goal.id]);
    return facts.filter((fact) => 'unit' in fact && rests.has(fact.quantity)).length;
  }
}
