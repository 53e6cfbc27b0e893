import { type NamedUnit, namedUnits } from '../calc/read/named-units.ts';
import { read } from '../calc/read/read.ts';
import type { Figure, Item } from '../calc/read/reading.ts';
import { systemOf, type Unit } from '../calc/units.ts';
import { inAskedUnit } from './asked-unit.ts';
import { type Command, commandsIn } from './commands.ts';
import { countedGoal } from './counted-goal.ts';
import type { Cue } from './cue.ts';
import { heardIn } from './cue-index.ts';
import type { Engine } from './engine.ts';
import { type Fact, factsOfJob } from './facts.ts';
import { fitsInSize } from './fits-size.ts';
import { fitting } from './fitting.ts';
import { type Goal, goalsOf, type Scored } from './goal.ts';
import { checkedGoal, impliedGoal, supplyGoal, timeOfThat } from './implied.ts';
import { impliedLimit, impliedPractice, judgedInstead } from './implied-rule.ts';
import { emptyJob } from './job.ts';
import { judgedAfter } from './judged-after.ts';
import { withJudged } from './judged-figure.ts';
import type { Job, Request, UnitSystem } from './reply.ts';
import { isSameAgain, light } from './same-again.ts';
import { type Sentence, sentenceOf } from './sentence.ts';
import { settledFirst } from './settled-first.ts';
import { followsFrom, spokenBefore } from './spoken-before.ts';
import { statedLimit } from './stated.ts';
import type { Taken } from './taken.ts';
import { takerOf } from './taking.ts';
import { assigned, titleAsked } from './titles.ts';
import { toldAfter } from './told-after.ts';
import { whyGoal } from './why-goal.ts';
import { figureAsks, openingHeads } from './wording/asking.ts';
import { suits } from './work-goals.ts';
import { workable } from './workable.ts';

/** What a question was taken to mean. */
export interface Understanding {
  readonly goal: Goal | undefined;
  /** True when the goal is carried over from an earlier turn. */
  readonly goalKept: boolean;
  /** True when no more is heard of the goal than the name of a thing, in a question that asks for no figure and gives none. */
  readonly isFaint: boolean;
  readonly turn: number;
  /** How far the job has come, as an earlier turn left it. */
  readonly stage: string | undefined;
  /** Units the asker has asked for in words. */
  readonly units: UnitSystem | undefined;
  readonly commands: ReadonlySet<Command>;
  /** All facts of the job; the fresh ones were said in this question. */
  readonly facts: readonly Fact[];
  readonly fresh: readonly Fact[];
  readonly unbound: readonly Figure[];
  /** The roles the figures of this question have. */
  readonly roles: Taken['roles'];
  /** Quantities spoken of without a figure: they are asked for, not assumed. */
  readonly open: ReadonlySet<string>;
  /** True when it answers what was asked last. */
  readonly isAnswer: boolean;
  readonly system: UnitSystem;
  readonly sentence: Sentence;
  /** The question as it was read, word by word. */
  readonly items: readonly Item[];
  /** Units named without a number. */
  readonly named: readonly NamedUnit[];
}

/** A cue must weigh this much to be taken for a goal. */
const enough = 2;

/** Reads a question against the job so far. `before` are its items, where it has been read. */
export function understand(engine: Engine, request: Request, job: Job, before?: readonly Item[]): Understanding {
  const items = before ?? read(request.question, request.units ? { units: request.units } : {});
  const sentence = sentenceOf(items, engine.vocabulary, engine.small, spokenBefore(job, engine));
  const commands = commandsIn(sentence);
  const past = commands.has('start-over') ? emptyJob : job;
  const kept = factsOfJob(past, engine.knowledge);
  const units = commands.has('metric') ? 'metric' : commands.has('us') ? 'us' : past.units;
  const system = units ?? request.units ?? systemSaid(sentence, kept);
  const named = namedUnits(items);
  const clear = goalsOf(engine.goals, sentence).filter(
    (goal) =>
      goal.score >= enough &&
      suits(goal, sentence) &&
      fitsInSize(engine.knowledge, goal, sentence, system) &&
      followsFrom(engine, goal, kept),
  );
  const heard = ruledFirst(inAskedUnit(engine.knowledge, clear, sentence, named));
  const turn = past.turn + 1;
  const take = takerOf(engine, sentence, { question: request.question, past, kept, system, turn });
  const found = sentence.places.has('@why') ? heard : settledFirst(engine, heard, take);
  const old = engine.goalNamed(past.goal ?? '');
  const only = past.goal === undefined ? undefined : assigned(sentence, engine.titles);
  const sought =
    only || (past.goal !== undefined && isSameAgain(sentence, found[0]))
      ? undefined
      : workable(
          engine,
          notYetSaid(engine, sentence, found, take, old),
          sentence.figures.length > 1 || old ? found : [],
          take,
        );
  const titled = only ? undefined : titleAsked(sentence, engine.titles);
  const why =
    only || !sentence.places.has('@why') ? undefined : whyGoal(engine, sentence, goalsOf(engine.goals, sentence));
  const stated = only || why ? undefined : statedLimit(engine, sentence, sought, take);
  const judged = why || stated ? undefined : judgedInstead(engine, sentence, sought, take, past.goal !== undefined);
  const after =
    only || sought || why
      ? undefined
      : toldAfter(engine, sentence, { goal: old, kept, checked: past.checked }, (of, on) => take(of, undefined, on));
  const goal = only
    ? old
    : ((titled && ({ kind: 'quantity', id: titled.id } as const)) ??
      why ??
      (sought?.kind === 'limit' || sought === undefined ? countedGoal(engine, sentence, take) : undefined) ??
      supplyGoal(engine, sentence, found) ??
      judged ??
      stated ??
      sought ??
      timeOfThat(engine, sentence, old) ??
      after?.goal ??
      checkedGoal(engine, sentence, take) ??
      impliedGoal(engine, named, take) ??
      impliedPractice(engine.knowledge, sentence, take(undefined)) ??
      impliedLimit(engine.knowledge, sentence, take(undefined), past.goal !== undefined) ??
      judgedAfter(engine, sentence, { goal: old, kept, turn }) ??
      old);
  const on = after?.goal === goal ? after?.on : undefined;
  const taken = fitting(engine, goal, take(goal, sought?.cue, on), (without) => take(goal, sought?.cue, on, without));
  return {
    goal,
    isAnswer: past.asked !== undefined && taken.fresh.some(({ quantity }) => quantity === past.asked),
    goalKept: goal !== undefined && (only !== undefined || (found.length === 0 && goal === old)),
    isFaint: goal !== undefined && goal === sought && kept.length === 0 && isFaint(sought, sentence),
    turn,
    stage: past.stage,
    units,
    system,
    sentence,
    items,
    named,
    commands,
    open: new Set(heardIn(engine.open, sentence).map(({ of }) => of)),
    ...withJudged(engine, goal, taken),
  };
}

/** Whether a step may be left out is judged by its own rule, where there is one; the step says only why it is there. */
function ruledFirst(found: readonly Scored[]): readonly Scored[] {
  const isRuled = found.some(({ kind }) => kind === 'practice' || kind === 'limit');
  return isRuled ? found.filter(({ kind, id }) => kind !== 'step' || !id.startsWith('skip-')) : found;
}

/**
 * The best goal that the question does not itself give a figure for: "residue 60 %, what do I shoot" is not after the
 * residue, and "what if I shoot .1" goes on with what was asked before.
 */
function notYetSaid(
  engine: Engine,
  sentence: Sentence,
  found: readonly Scored[],
  take: (goal: Goal | undefined) => Taken,
  old: Goal | undefined,
): Scored | undefined {
  const goesOn = old !== undefined;
  const [best] = found;
  const isJudgeable = best?.kind === 'fault' || (best?.kind === 'defect' && sentence.places.has('@check'));
  const judged = isJudgeable ? found.find((goal) => isGivenTo(engine, goal, take)) : undefined;
  if (judged) return judged;
  if (
    best?.kind !== 'quantity' ||
    sentence.figures.length === 0 ||
    sentence.places.has('@check') ||
    !(found.length > 1 || goesOn)
  )
    return best;
  if (old && best.id !== old.id && !asksNew(sentence) && take(old).fresh.some(({ quantity }) => quantity === best.id))
    return undefined;
  const { dimension, bare, parts } = engine.knowledge.quantities.get(best.id)!;
  const { places } = sentence;
  if (!places.has(`#${dimension}`) && !(bare && places.has('#number')) && !(parts && places.has('#parts'))) return best;
  const { told } = take(undefined);
  const other = found.find(({ kind, id }) => kind !== 'quantity' || !told.has(id));
  // "How wide at the bottom is the row" asks for it, whatever figure stands beside its words.
  const isAsked = asksHow(best.cue) && (other?.score ?? 0) < best.score / 3;
  return isAsked ? best : (other ?? (goesOn ? undefined : best));
}

/** True where a sentence asks for something of its own, and does not only say what it would be with another figure. */
const asksNew = ({ places }: Sentence): boolean =>
  openingHeads.some((head) => places.get(head)?.some((at) => head !== 'what' || !places.get('if')?.includes(at + 1)));

/** "How+wide": the cue itself asks. */
const asksHow = ({ needs }: Cue): boolean => needs.some((term) => term.length > 1 && term[0]!.includes('how'));

/** True for a limit on something that the question gives a figure for: "it sits 1/8 in high, ok" asks about the figure, not for causes. */
function isGivenTo({ knowledge }: Engine, { kind, id }: Scored, take: (goal: undefined) => Taken): boolean {
  const on = kind === 'limit' ? knowledge.limits.get(id)?.on.id : undefined;
  return on !== undefined && take(undefined).told.has(on);
}

/** What asks for an amount: then the name of a thing is enough to know what is asked. */
const amountAsks = [...figureAsks, 'figure'];

/** "Do we heat the emulsion" speaks of tack, and asks for no amount of it. */
function isFaint({ kind, score, cue }: Scored, { places, figures, tokens, small }: Sentence): boolean {
  if (kind !== 'quantity' || score >= light || cue.needs.length > 1 || figures.length > 0) return false;
  if (amountAsks.some((word) => places.has(word))) return false;
  const words = tokens.filter((token) => token.kind === 'word' && !small.has(token.head) && token.head !== 'check');
  return words.length > 1 && ['@check', 'what', 'which', 'who', 'when', 'where'].some((word) => places.has(word));
}

/** The system most of the figures given are in; what was kept decides where this question has none. */
function systemSaid(sentence: Sentence, kept: readonly Fact[]): UnitSystem {
  const fresh = sentence.tokens.flatMap((token) =>
    token.kind === 'figure' && token.figure.unit ? [token.figure.unit] : [],
  );
  const units: Unit[] = fresh.some((unit) => systemOf(unit))
    ? fresh
    : kept.flatMap((fact) => ('unit' in fact ? [fact.unit] : []));
  const metric = units.filter((unit) => systemOf(unit) === 'metric').length;
  const us = units.filter((unit) => systemOf(unit) === 'us').length;
  return metric > us ? 'metric' : 'us';
}
