import type { Figure } from '../calc/read/reading.ts';
import { restsOn } from '../calc/solve.ts';
import { conflicts } from '../rules/conflicts.ts';
import { isSaidLike } from '../rules/knowledge.ts';
import { whatFollows } from '../rules/start.ts';
import type { Engine } from './engine.ts';
import { knownFrom } from './facts.ts';
import type { Goal } from './goal.ts';
import type { Taken } from './taken.ts';

/** Roles that a figure is not to have, by the figure. */
export type Without = ReadonlyMap<Figure, ReadonlySet<string>>;

/** How much less well words may tell the roles of a reading that leads to an answer, or leaves less unused; and where they only change for what is said in the same words. */
const mostLost = { other: 10, alike: 18 };

/** How far a reading gets: whether what is asked can be worked out, and how many of the figures have no part in it. */
interface Reach {
  readonly isWorked: boolean;
  readonly unused: readonly string[];
  /** The usual figures it rests on. */
  readonly assumed: readonly string[];
}

/**
 * The figures in the roles that words tell, or where what is asked cannot be worked out from them so, or one of them would
 * have no part in it, in those next best that do lead there: "30,500 lb of mix, 12 ft lane, half inch, how far" gives
 * what is on the truck. `again` takes the figures again without some roles.
 */
export function fitting(
  { knowledge }: Engine,
  goal: Goal | undefined,
  first: Taken,
  again: (without: Without) => Taken,
): Taken {
  // Of several patches each is worked by itself.
  const groups = new Set([...first.roles.map(({ figure }) => figure), ...first.unbound].map(({ group }) => group));
  if (goal?.kind !== 'quantity' || first.roles.length < 2 || groups.size > 2) return first;
  const id = goal.id;
  const reached = reachOf(first);
  if (reached.isWorked && reached.unused.length === 0) return first;
  const tried = first.roles
    .filter(({ quantity }) => quantity !== id && (!reached.isWorked || reached.unused.includes(quantity)))
    .map(({ figure, quantity }) => again(new Map([[figure, new Set([quantity])]])))
    .filter(({ weight, roles }) => first.weight - weight <= (isLikeSaid(roles) ? mostLost.alike : mostLost.other))
    .filter(({ unbound, roles }) => unbound.length <= first.unbound.length && counted(roles) >= counted(first.roles))
    .filter(({ roles }) => keepsWhatIsTold(roles))
    .map((taken) => ({ taken, reach: reachOf(taken) }))
    .filter(({ reach }) => reach.isWorked && reach.unused.length < Math.max(1, reached.unused.length))
    .sort((a, b) => a.reach.unused.length - b.reach.unused.length || b.taken.weight - a.taken.weight);
  return tried[0]?.taken ?? first;

  /** How many are counts: what is counted is no measure of something else. */
  function counted(roles: Taken['roles']): number {
    return roles.filter(({ quantity }) => knowledge.quantities.get(quantity)?.dimension === 'count').length;
  }

  /** True where figures only change their roles for what is said in the same words. */
  function isLikeSaid(roles: Taken['roles']): boolean {
    return first.roles.every(({ figure, quantity }) => {
      const now = roles.find((role) => role.figure === figure)?.quantity;
      return now !== undefined && isSaidLike(knowledge, quantity, now);
    });
  }

  /** A role that a word tells is left only for one that a usual figure was about to fill, or that is given in the same words. */
  function keepsWhatIsTold(roles: Taken['roles']): boolean {
    return first.roles.every(({ figure, quantity, told }) => {
      const now = roles.find((role) => role.figure === figure)?.quantity;
      return (
        !told ||
        now === quantity ||
        (now !== undefined && (reached.assumed.includes(now) || isSaidLike(knowledge, quantity, now)))
      );
    });
  }

  function reachOf({ facts, roles }: Taken): Reach {
    const solved = whatFollows(knowledge, knownFrom(facts));
    const rests = restsOn(solved, [id]);
    const isWorked = Boolean(solved.get(id)?.by) && conflicts(knowledge, solved, id, rests).length === 0;
    return {
      isWorked,
      assumed: solved.get(id)?.assumed ?? [],
      unused: roles.map(({ quantity }) => quantity).filter((each) => !rests.has(each)),
    };
  }
}
