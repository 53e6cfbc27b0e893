import { toBase } from '../calc/quantity.ts';
import { restsOn } from '../calc/solve.ts';
import { unitRow } from '../calc/units.ts';
import { boundsOf } from '../rules/judge.ts';
import { whatFollows } from '../rules/start.ts';
import { type Engine, soughtBy, startsOf } from './engine.ts';
import { knownFrom } from './facts.ts';
import type { Goal } from './goal.ts';
import type { Sentence } from './sentence.ts';
import { isSettled } from './stated.ts';
import type { Taken } from './taken.ts';
import { figureAsks, havingHeads, ruleHeads } from './wording/asking.ts';

/** What was asked in the turn before, and what the job has. */
interface Before {
  readonly goal: Goal | undefined;
  readonly kept: Taken['facts'];
  /** The quantity of which a figure was held against the need. */
  readonly checked?: string | undefined;
}

/** A goal, and the quantity that the figure is for. */
export interface ToldAfter {
  readonly goal: Goal;
  readonly on?: string;
}

/** Takes the figures in the light of a goal, the bare one as the quantity named. */
type Take = (goal: Goal | undefined, on?: string) => Taken;

/**
 * "They got 700 out there", after a taper was asked for: one figure that stands beside what was worked out before is held
 * against it, by the limit of that where there is one. So is one that changes nothing about what was asked, but is judged by
 * a limit of its own: "and if the road drops to 52". Undefined where a figure takes the place of one the job has.
 */
export function toldAfter(
  engine: Engine,
  sentence: Sentence,
  { goal, kept, checked }: Before,
  take: Take,
): ToldAfter | undefined {
  const { places, figures } = sentence;
  if (!goal || (goal.kind !== 'quantity' && goal.kind !== 'limit') || figures.length !== 1) return undefined;
  if (['@why', ...figureAsks].some((word) => places.has(word))) return undefined;
  if (places.has('instead') && !places.has('@check')) return undefined;
  return (
    boundOf(engine, sentence, goal, take) ??
    againstAsked(engine, sentence, goal, kept, take, checked) ??
    ofItsOwn(engine, goal, kept, take)
  );
}

/** "Our county allows up to 1 1/2", after a lift was judged: the asker's own bound of the rule that was asked about. */
function boundOf(engine: Engine, sentence: Sentence, goal: Goal, take: Take): ToldAfter | undefined {
  if (sentence.places.has('@check') || !setsARule(sentence)) return undefined;
  const rule = goal.kind === 'limit' ? engine.knowledge.limits.get(goal.id) : undefined;
  const on = (rule ? boundsOf(rule) : [goal.id]).find(
    (id) => engine.knowledge.quantities.get(id)?.default && isFor(id, take(goal, id)),
  );
  return on === undefined ? undefined : { goal, on };
}

/** "Their spec is …", "up to …": a figure that is not to be gone over or under. */
const setsARule = ({ places, tokens }: Sentence): boolean =>
  ruleHeads.some((word) => places.has(word)) ||
  tokens.some((token) => token.kind === 'figure' && token.figure.bound !== undefined);

/** The figure held against the quantity asked for before, by a limit or by itself. */
function againstAsked(
  engine: Engine,
  sentence: Sentence,
  goal: Goal,
  kept: Taken['facts'],
  take: Take,
  checked: string | undefined,
): ToldAfter | undefined {
  if (goal.kind !== 'quantity') return undefined;
  const { limits, quantities } = engine.knowledge;
  const sought = new Set(soughtBy(engine.knowledge, goal));
  const isSought = (id: string): boolean =>
    sought.has(id) ||
    (quantities.get(id)?.standsIn === true && soughtBy(engine.knowledge, { kind: 'quantity', id }).includes(goal.id));
  for (const rule of limits.values()) {
    const supposed = sentence.places.has('@check') ? rule.supposes?.find(({ id }) => isSought(id))?.id : undefined;
    if (!rule.cues || !(supposed || [rule.on.id, ...boundsOf(rule)].some(isSought))) continue;
    const meant: Goal = { kind: 'limit', id: rule.id };
    const on = supposed ?? rule.on.id;
    const taken = take(meant, on);
    const isMeant = supposed || tellsWhatIs(sentence) || isLikest(engine, goal.id, on, taken, kept);
    if (isMeant && isFor(on, taken) && isSettled(engine, rule, taken)) return { goal: meant, on };
  }
  const taken = take(goal, goal.id);
  // "What about 50 tons", after 40 were held against the need.
  if (checked === goal.id && isFor(goal.id, taken) && isAgain(engine, goal.id, taken, kept))
    return { goal, on: goal.id };
  return tellsWhatIs(sentence) && isFor(goal.id, taken) && isLikest(engine, goal.id, goal.id, taken, kept)
    ? { goal, on: goal.id }
    : undefined;
}

const isFor = (id: string, { fresh }: Taken): boolean => fresh.some(({ quantity }) => quantity === id);

/** True for a figure in a unit that none of the job's has, or likest in size to what it would be held against. */
function isAgain(engine: Engine, id: string, taken: Taken, kept: Taken['facts']): boolean {
  const own = taken.fresh.find(({ quantity }) => quantity === id);
  if (!own || !('unit' in own)) return false;
  const { dimension } = unitRow(own.unit);
  const isOnly = !kept.some((fact) => 'unit' in fact && unitRow(fact.unit).dimension === dimension);
  return (isOnly && !own.unitAssumed) || isLikest(engine, id, id, taken, kept);
}

/** "We only have …", "they set …": what there is, and nothing to work it out anew with. */
const tellsWhatIs = ({ places }: Sentence): boolean => havingHeads.some((word) => places.has(word));

/** True where a figure is nearer in size to what it would be held against than to any of its kind that the job has. */
function isLikest({ knowledge }: Engine, against: string, on: string, { fresh }: Taken, kept: Taken['facts']): boolean {
  const own = fresh.find(({ quantity }) => quantity === on);
  if (!own || !('unit' in own) || kept.some(({ quantity }) => quantity === on)) return false;
  const size = toBase(own.number, own.unit);
  const solved = whatFollows(knowledge, knownFrom(kept));
  const apart = (base: number): number => Math.abs(Math.log(size / base));
  const bound = solved.get(against)?.value;
  const { dimension } = unitRow(own.unit);
  const rivals = kept.flatMap((fact) => {
    if (!('unit' in fact)) return [];
    if (own.unitAssumed) return [Math.abs(Math.log(own.number / fact.number))];
    return unitRow(fact.unit).dimension === dimension ? [apart(toBase(fact.number, fact.unit))] : [];
  });
  return bound !== undefined && apart(bound) < Math.min(...rivals);
}

/** The limit on a figure that has nothing to do with what was asked before, and takes the place of one the job has. */
function ofItsOwn(engine: Engine, goal: Goal, kept: Taken['facts'], take: Take): ToldAfter | undefined {
  const { knowledge } = engine;
  const { fresh, facts } = take(undefined);
  const figured = fresh.filter((fact) => 'unit' in fact).map(({ quantity }) => quantity);
  if (figured.length === 0 || !figured.every((id) => kept.some(({ quantity }) => quantity === id))) return undefined;
  const solved = whatFollows(knowledge, knownFrom(facts));
  const beside = goal.kind === 'quantity' ? (knowledge.quantities.get(goal.id)?.beside ?? []) : [];
  const rests = restsOn(solved, [...startsOf(knowledge, goal), ...beside]);
  if (figured.some((id) => rests.has(id))) return undefined;
  const meant = knowledge.records.limits.filter(({ on, cues }) => cues && figured.includes(on.id));
  const [rule, ...others] = meant.filter((each) => isSettled(engine, each, take({ kind: 'limit', id: each.id })));
  return rule && others.length === 0 ? { goal: { kind: 'limit', id: rule.id } } : undefined;
}
