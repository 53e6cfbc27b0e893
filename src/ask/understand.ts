import { read } from '../calc/read/read.ts';
import type { Figure } from '../calc/read/reading.ts';
import { systemOf, type Unit } from '../calc/units.ts';
import { bind } from './bind.ts';
import { placesOf } from './cue.ts';
import { choicesIn } from './choices.ts';
import { type Command, commandsIn } from './commands.ts';
import { type Engine, startsOf } from './engine.ts';
import { type Fact, factOf, factsOfJob, merge } from './facts.ts';
import { type Goal, goalsOf } from './goal.ts';
import { emptyJob } from './job.ts';
import type { Job, Request, UnitSystem } from './reply.ts';
import { type Sentence, sentenceOf } from './sentence.ts';

/** What a question was taken to mean. */
export interface Understanding {
  readonly goal: Goal | undefined;
  /** True when the goal is carried over from an earlier turn. */
  readonly goalKept: boolean;
  readonly turn: number;
  /** Units the asker has asked for in words. */
  readonly units: UnitSystem | undefined;
  readonly commands: ReadonlySet<Command>;
  /** All facts of the job; the fresh ones were said in this question. */
  readonly facts: readonly Fact[];
  readonly fresh: readonly Fact[];
  readonly unbound: readonly Figure[];
  readonly system: UnitSystem;
  readonly sentence: Sentence;
}

/** A cue must weigh this much to be taken for a goal. */
const enough = 2;

/** Reads a question against the job so far. */
export function understand(engine: Engine, request: Request, job: Job): Understanding {
  const items = read(request.question, request.units ? { units: request.units } : {});
  const sentence = sentenceOf(items, engine.vocabulary, engine.small);
  const commands = commandsIn(sentence);
  const past = commands.has('start-over') ? emptyJob : job;
  const kept = factsOfJob(past, engine.knowledge);
  const units = commands.has('metric') ? 'metric' : commands.has('us') ? 'us' : past.units;
  const system = units ?? request.units ?? systemSaid(sentence, kept);
  const found = goalsOf(engine.goals, sentence).filter((goal) => goal.score >= enough);
  const goal = found[0] ?? goalFrom(past.goal, engine);
  const turn = past.turn + 1;
  const { bound, unbound } = bind(sentence, {
    quantities: [...engine.knowledge.quantities.values()],
    near: engine.near(goal),
    sought: new Set(goal?.kind === 'quantity' && !sentence.places.has('@check') ? startsOf(engine.knowledge, goal) : []),
    spent: new Set(found[0]?.kind === 'quantity' ? placesOf(found[0].cue, sentence) : []),
    asked: past.asked,
    system,
  });
  const figures = bound.map((each) => factOf(each, turn));
  const fresh = [...figures, ...choicesIn(engine, sentence, merge(kept, figures), turn)];
  return { goal, goalKept: goal !== undefined && found.length === 0, turn, units, system, sentence, commands, fresh, unbound, facts: merge(kept, fresh) };
}

/** A goal as a job carries it. */
export const goalText = (goal: Goal): string => `${goal.kind}/${goal.id}`;

/** The goal a job carries, where there is such a record. */
function goalFrom(text: string | undefined, { knowledge }: Engine): Goal | undefined {
  const [kind, id = ''] = text?.split('/') ?? [];
  if (kind === 'quantity' && knowledge.quantities.has(id)) return { kind, id };
  if (kind === 'limit' && knowledge.limits.has(id)) return { kind, id };
  if (kind === 'practice' && knowledge.practices.has(id)) return { kind, id };
  return undefined;
}

/** The system most of the figures given are in; what was kept decides where this question has none. */
function systemSaid(sentence: Sentence, kept: readonly Fact[]): UnitSystem {
  const fresh = sentence.tokens.flatMap((token) => (token.kind === 'figure' && token.figure.unit ? [token.figure.unit] : []));
  const units: Unit[] = fresh.some((unit) => systemOf(unit)) ? fresh : kept.flatMap((fact) => ('unit' in fact ? [fact.unit] : []));
  const metric = units.filter((unit) => systemOf(unit) === 'metric').length;
  const us = units.filter((unit) => systemOf(unit) === 'us').length;
  return metric > us ? 'metric' : 'us';
}
