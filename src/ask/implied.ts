import type { NamedUnit } from '../calc/read/named-units.ts';
import { restsOn, solve } from '../calc/solve.ts';
import { unitRow } from '../calc/units.ts';
import { startOf } from '../rules/knowledge.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import type { Engine } from './engine.ts';
import { knownFrom } from './facts.ts';
import type { Goal } from './goal.ts';
import { needOf } from './need.ts';
import type { Sentence } from './sentence.ts';
import type { Taken } from './taken.ts';

type Take = (goal: Goal | undefined) => Taken;

const goalOf = ({ id }: QuantityRecord): Goal => ({ kind: 'quantity', id });

/** "Is 12 ton right for 12 x 150 at 1 in?" names no goal but a figure: the quantity that the other figures lead to is meant. */
export function checkedGoal(engine: Engine, sentence: Sentence, take: Take): Goal | undefined {
  if (!sentence.places.has('@check') || sentence.figures.length < 2) return undefined;
  const first = ({ dimension }: QuantityRecord): number => sentence.places.get(`#${dimension}`)![0]!;
  return [...engine.knowledge.quantities.values()]
    .filter(({ cues, dimension }) => cues && sentence.places.has(`#${dimension}`))
    .sort((a, b) => first(a) - first(b) || Number(b.plain ?? false) - Number(a.plain ?? false))
    .map(goalOf)
    .find((goal) => {
      const { facts, fresh } = take(goal);
      return fresh.some(({ quantity }) => quantity === goal.id) && needOf(engine, facts, goal.id) !== undefined;
    });
}

/**
 * "150 L/min, 3.6 m bar, 0.4 L/m2: how many m/min" names no goal but a unit: of what it measures, the quantity is meant
 * that most of the figures lead to, then the one that assumes least. Undefined when two serve alike.
 */
export function impliedGoal({ knowledge }: Engine, named: readonly NamedUnit[], take: Take): Goal | undefined {
  const dimensions = new Set(named.map(({ unit }) => unitRow(unit).dimension));
  if (dimensions.size === 0) return undefined;
  const { facts, fresh } = take(undefined);
  const given = new Set(fresh.flatMap((fact) => ('unit' in fact ? [fact.quantity] : [])));
  if (given.size === 0) return undefined;
  const solved = solve(knowledge.network, startOf(knowledge, knownFrom(facts)));
  const served = [...knowledge.quantities.values()]
    .filter(({ id, cues, dimension }) => cues && dimensions.has(dimension) && !given.has(id) && solved.get(id)?.by)
    .map((record) => ({ record, used: [...restsOn(solved, [record.id])].filter((id) => given.has(id)).length, assumed: solved.get(record.id)!.assumed.length }))
    .filter(({ used }) => used > 0)
    .sort((a, b) => b.used - a.used || a.assumed - b.assumed);
  const [best, next] = served;
  return best && !(next && next.used === best.used && next.assumed === best.assumed) ? goalOf(best.record) : undefined;
}
