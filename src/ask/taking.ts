import { unitRow } from '../calc/units.ts';
import { choicesIn, optionsHeard } from './choices.ts';
import { type Cue, placesOf } from './cue.ts';
import { type Engine, soughtBy } from './engine.ts';
import { corrected, type Fact, factOf, merge } from './facts.ts';
import type { Without } from './fitting.ts';
import { type Goal, goalText } from './goal.ts';
import { insteadOf } from './instead-of.ts';
import { relativeTo } from './relative.ts';
import type { Job, UnitSystem } from './reply.ts';
import type { Context } from './role-context.ts';
import { added, boundFor, meantBy } from './roles-taken.ts';
import { figuresInWords } from './said-as.ts';
import type { Sentence } from './sentence.ts';
import { saysOnly } from './stated.ts';
import { liftFigures } from './step-stage.ts';
import type { Taken } from './taken.ts';
import { assigned, figuresInTitles, namesIn, titledBefore } from './titles.ts';
import { askingHeads } from './wording/asking.ts';

/** What the figures of a question are taken with: the question as it was typed, the job so far, what it keeps, and the turn. */
interface Taking {
  readonly question: string;
  readonly past: Job;
  readonly kept: readonly Fact[];
  readonly system: UnitSystem;
  readonly turn: number;
}

/**
 * Takes the figures of a question in the light of a goal, heard by a cue; `on` is the quantity that a figure is likeliest
 * for, as by what was asked before; `without` rules out roles.
 */
type Take = (goal: Goal | undefined, cue?: Cue, on?: string, without?: Without) => Taken;

/**
 * Gives the figures of a sentence their roles in the light of a goal, and joins them to what was kept. Many goals are tried
 * on a question: what is the same for all of them is found once, and so is what was taken for each.
 */
export function takerOf(engine: Engine, sentence: Sentence, { question, past, kept, system, turn }: Taking): Take {
  const { knowledge, titles } = engine;
  const { lift, count: lifts } = liftFigures(sentence);
  const numbered = lift !== undefined && titledBefore(sentence, lift, titles) ? undefined : lift;
  const relative = relativeTo(engine, sentence, kept, turn);
  const figured = withoutFigures(sentence, [numbered, lifts, ...relative.spent, ...figuresInTitles(sentence, titles)]);
  const worded = [...relative.facts, ...figuresInWords(engine.inWords, sentence, turn)];
  const options = optionsHeard(engine, { sentence, question, asked: past.asked });
  const isChecked = sentence.places.has('@check');
  const isAssigned = assigned(sentence, titles) !== undefined;
  const join = takesBack(sentence) ? corrected : merge;
  const figuresKept = new Map(
    kept.flatMap((fact) =>
      'unit' in fact ? [[fact.quantity, { number: fact.number, unit: fact.unit }] as const] : [],
    ),
  );
  const inWords = new Set(worded.map(({ quantity }) => quantity));
  const names = saysOnly(sentence, titles) ? namesIn(sentence, titles) : new Set<number>();
  const inLightOf = (
    goal: Goal | undefined,
    cue: Cue | undefined,
    on: string | undefined,
    without?: Without,
  ): Context => ({
    quantities: knowledge.quantities,
    byWord: engine.byWord,
    titles,
    names,
    sides: engine.sides,
    weak: engine.weak,
    aimed: goal !== undefined,
    near: engine.near(goal),
    sought: new Set(isChecked || on === goal?.id ? [] : soughtBy(knowledge, goal)),
    spent: new Set(cue ? spentBy(cue, sentence) : []),
    kept: figuresKept,
    meant: meantBy(engine, goal),
    asked: on,
    without,
    judged: goal?.kind === 'limit' && on === past.asked ? knowledge.limits.get(goal.id)?.on.id : undefined,
    inWords,
    system,
  });
  // "How much at 60", of the gallons at 60 degrees: a number in the name of what is asked for is no fact.
  const figuredFor = (goal: Goal | undefined): Sentence => {
    const title = goal?.kind === 'quantity' ? knowledge.quantities.get(goal.id)?.title : undefined;
    const numbers = title?.match(/\d+/g);
    return numbers
      ? withoutFigures(
          figured,
          figured.figures.filter((at) => isNameOf(sentence, at, numbers)),
        )
      : figured;
  };
  const takeFor = (goal: Goal | undefined, cue: Cue | undefined, on: string | undefined, without?: Without): Taken => {
    const { bound, unbound, weight } = boundFor(figuredFor(goal), inLightOf(goal, cue, on, without));
    const roles = bound.map(({ typed: figure, record, told }) => ({ figure, quantity: record.id, told }));
    const typed = insteadOf(engine.knowledge, sentence, [
      ...added(bound).map((each) => factOf(each, turn)),
      ...liftsSaid(sentence, lifts, turn),
    ]);
    if (isAssigned)
      return {
        told: new Set(typed.map(({ quantity }) => quantity)),
        fresh: typed,
        unbound,
        roles,
        weight,
        facts: merge(kept, typed),
      };
    // One that was also given as a figure is not taken from words.
    const figures = [...typed, ...worded.filter((fact) => !typed.some(({ quantity }) => quantity === fact.quantity))];
    const fresh = [...figures, ...choicesIn(knowledge, options, merge(kept, figures), turn)];
    const told = new Set(bound.flatMap((each) => (each.told ? [each.record.id] : [])));
    return { told, fresh, unbound, roles, weight, facts: join(kept, fresh) };
  };
  const taken = new Map<string, Taken>();
  return (goal, cue, on = past.asked, without) => {
    // Only to a quantity does it matter by which words it was asked for.
    const own = goal?.kind === 'quantity' ? cue : undefined;
    if (without) return takeFor(goal, own, on, without);
    const key = [goal && goalText(goal), own?.text, on].join();
    const found = taken.get(key) ?? takeFor(goal, own, on);
    taken.set(key, found);
    return found;
  };
}

/** "No, .05 is the residual", "I meant 12 wide". */
const takesBack = ({ places }: Sentence): boolean =>
  places.get('no')?.[0] === 0 || places.has('meant') || places.has('mean');

/** Places of the cue's words in the clause that asks: by a question word, else by holding no figure; else all of them. */
function spentBy(cue: Cue, sentence: Sentence): number[] {
  const { tokens, places, figures } = sentence;
  const clause = (place: number): number => tokens.slice(0, place).filter((token) => token.kind === 'mark').length;
  const all = placesOf(cue, sentence);
  const asks = new Set(askingHeads.flatMap((head) => places.get(head) ?? []).map(clause));
  if (asks.size > 0) return all.filter((at) => asks.has(clause(at)));
  const figured = new Set(figures.map(clause));
  const apart = all.filter((at) => !figured.has(clause(at)));
  return apart.length > 0 ? apart : all;
}

/** The sentence with some of its figures left alone. */
const withoutFigures = (sentence: Sentence, places: readonly (number | undefined)[]): Sentence =>
  places.some((at) => at !== undefined)
    ? { ...sentence, figures: sentence.figures.filter((at) => !places.includes(at)) }
    : sentence;

/** True for one of these numbers right after "at" or "to". */
function isNameOf({ tokens }: Sentence, at: number, numbers: readonly string[]): boolean {
  const [before, token] = [tokens[at - 1], tokens[at]];
  if (token?.kind !== 'figure' || before?.kind !== 'word' || !['at', 'to'].includes(before.head)) return false;
  const { unit, number } = token.figure;
  return (unit === undefined || unitRow(unit).dimension === 'temperature') && numbers.includes(String(number));
}

/** "Lift 2 of 3" says how many lifts there are. */
function liftsSaid({ tokens }: Sentence, at: number | undefined, turn: number): Fact[] {
  const token = at === undefined ? undefined : tokens[at];
  return token?.kind === 'figure'
    ? [{ quantity: 'lift-count', number: token.figure.number, unit: '1', turn, fresh: true, from: token.at }]
    : [];
}
