import type { NamedUnit } from '../calc/read/named-units.ts';
import { restsOn } from '../calc/solve.ts';
import { type Unit, unitRow } from '../calc/units.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import { whatFollows } from '../rules/start.ts';
import type { Engine } from './engine.ts';
import { knownFrom } from './facts.ts';
import type { Goal, Scored } from './goal.ts';
import { needOf } from './need.ts';
import type { Sentence } from './sentence.ts';
import type { Taken } from './taken.ts';

type Take = (goal: Goal | undefined) => Taken;

const goalOf = ({ id }: QuantityRecord): Goal => ({ kind: 'quantity', id });

/** The figure that a yes-or-no question is about: "…, can I get by with 40 tons" the one after, "is 40 tons enough for …" the one before. */
function checkedFigure({ tokens, figures, places }: Sentence): number {
  const asks = places.get('check')?.[0];
  if (asks === undefined) return figures[0]!;
  const opens = asks === 0 || tokens[asks - 1]?.kind === 'mark';
  const after = figures.find((place) => place > asks);
  const before = figures.filter((place) => place < asks).at(-1);
  return (opens ? (after ?? figures[0]) : (before ?? after)) ?? figures[0]!;
}

/**
 * "Is 12 ton right for 12 x 150 at 1 in?" names no goal but a figure: the one that follows the word that asks, or the first.
 * Of what it could be, the patch's own quantity is meant, else one that the other figures lead to.
 */
export function checkedGoal(engine: Engine, sentence: Sentence, take: Take): Goal | undefined {
  if (!sentence.places.has('@check') || sentence.figures.length < 2) return undefined;
  const token = sentence.tokens[checkedFigure(sentence)];
  const dimension = token?.kind === 'figure' && token.figure.unit ? unitRow(token.figure.unit).dimension : undefined;
  const could = engine.knowledge.records.quantities
    .filter((record) => record.cues && record.dimension === dimension)
    .sort((a, b) => Number(b.plain ?? false) - Number(a.plain ?? false));
  const led = could.find((record) => {
    const { facts, fresh } = take(goalOf(record));
    const found = fresh.some(({ quantity }) => quantity === record.id) ? needOf(engine, facts, record.id) : undefined;
    return (
      found && fresh.some(({ quantity }) => quantity !== record.id && restsOn(found.solved, [record.id]).has(quantity))
    );
  });
  const meant = could.find(({ plain }) => plain) ?? led;
  return meant && goalOf(meant);
}

/** "How long will that take": of what is told beside the answer of before, the time it takes. */
export function timeOfThat({ knowledge }: Engine, { places }: Sentence, old: Goal | undefined): Goal | undefined {
  const asks = places.has('how-far') || (places.has('how') && places.has('long'));
  if (old?.kind !== 'quantity' || !asks || !places.has('need') || !places.has('that')) return undefined;
  const beside = (knowledge.quantities.get(old.id)?.beside ?? []).map((id) => knowledge.quantities.get(id)!);
  const time = beside.find(({ dimension }) => dimension === 'time');
  return time && goalOf(time);
}

/** What a crew has so much of that it may be enough. */
const supplies: ReadonlySet<string> = new Set(['mass', 'volume']);

/**
 * "60 gal on the trailer, patch 500 x 12 at .08, enough tack?" is after the need for what there is so much of, whatever else
 * is heard: of what was heard, the best that is measured so, else the patch's own quantity.
 */
export function supplyGoal({ knowledge }: Engine, sentence: Sentence, found: readonly Scored[]): Goal | undefined {
  if (!sentence.places.has('@supply') || sentence.figures.length < 2) return undefined;
  const dimension = sentence.figures
    .map((at) => sentence.tokens[at])
    .map((token) => (token?.kind === 'figure' && token.figure.unit ? unitRow(token.figure.unit).dimension : ''))
    .find((each) => supplies.has(each));
  const [best] = found;
  // "Are 2 loads enough, 15 ton trucks" counts the loads.
  const counts = best?.kind === 'quantity' && knowledge.quantities.get(best.id)?.dimension === 'count';
  if (dimension === undefined || counts) return undefined;
  const heard = found.find(
    ({ kind, id }) => kind === 'quantity' && knowledge.quantities.get(id)?.dimension === dimension,
  );
  const plain = [...knowledge.quantities.values()].find((record) => record.plain && record.dimension === dimension);
  return heard ?? (plain && goalOf(plain));
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
  const solved = whatFollows(knowledge, knownFrom(facts));
  const served = knowledge.records.quantities
    .filter(({ id, cues, dimension }) => cues && dimensions.has(dimension) && !given.has(id) && solved.get(id)?.by)
    .filter(({ units }) => named.some(({ unit }) => isNatural(unit, [units.us, units.metric])))
    .map((record) => ({
      record,
      used: [...restsOn(solved, [record.id])].filter((id) => given.has(id)).length,
      assumed: solved.get(record.id)!.assumed.length,
    }))
    .filter(({ used }) => used > 0)
    .sort((a, b) => b.used - a.used || a.assumed - b.assumed);
  const [best, next] = served;
  return best && !(next && next.used === best.used && next.assumed === best.assumed) ? goalOf(best.record) : undefined;
}

/** A unit far larger than those a quantity is told in asks for something else: yards are no depth of mix. */
const tooLarge = 13;

const isNatural = (unit: Unit, own: readonly Unit[]): boolean =>
  own.some((each) => {
    const [a, b] = [unitRow(unit), unitRow(each)];
    return a.dimension === b.dimension && (a.size[0] * b.size[1]) / (a.size[1] * b.size[0]) < tooLarge;
  });
