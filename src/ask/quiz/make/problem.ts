import { fromBase } from '../../../calc/quantity.ts';
import { type Rounding, usualRounding } from '../../../calc/rounding.ts';
import type { Unit } from '../../../calc/units.ts';
import type { Facts, QuantityRecord } from '../../../rules/shapes.ts';
import type { UnitSystem } from '../../reply.ts';
import { capital, say, saySource } from '../../say.ts';
import type { Voice } from '../../voice.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { problemStems } from '../../wording/quiz-stems.en.ts';
import { workingOf } from '../../working.ts';
import { sayFact, sourcesBehind, voiceOf } from '../facts.ts';
import { inMetric, metricUnit, slipsInFeet } from '../metric.ts';
import type { Case, Problem } from '../problem.ts';
import type { Random } from '../random.ts';
import type { Desk, Draft, Form, Level, Point } from '../shapes.ts';
import { chosen, type Figured, risingOptions } from './options.ts';

/** A problem in figures as a point of a quiz: to choose from, and, a level up, to fill in. */
export function problemPoint(desk: Desk, problem: Problem): Point {
  const forms: Form[] = [
    {
      id: 'one',
      kind: 'one',
      level: problem.level,
      make: (random, { place }) => withFacts(desk, problem, random, (worked) => toChoose(worked, random, place)),
    },
    {
      id: 'number',
      kind: 'number',
      level: harder[problem.level],
      make: (random) => withFacts(desk, problem, random, toFillIn),
    },
  ];
  return {
    id: `problem/${problem.id}`,
    group: `quantity/${problem.finds}`,
    topics: problem.topics,
    mustPass: false,
    forms,
  };
}

const harder: Readonly<Record<Level, Level>> = { easy: 'medium', medium: 'hard', hard: 'hard' };

/** The problem with these facts, to be filled in: the key is what the engine makes of them. Undefined when it makes nothing. */
export function problemFrom(desk: Desk, problem: Problem, facts: Facts): Draft | undefined {
  const worked = workedOut(desk, problem, facts);
  return worked && toFillIn(worked);
}

interface Worked {
  readonly problem: Problem;
  readonly stem: string;
  readonly record: QuantityRecord;
  readonly unit: Unit;
  readonly voice: Voice;
  readonly at: Case;
  readonly tolerance: number;
  /** The mistakes that are made in these units. */
  readonly slips: Problem['mistakes'];
}

/** Tries of drawing facts that are fair. */
const tries = 24;

function withFacts(
  desk: Desk,
  problem: Problem,
  random: Random,
  make: (worked: Worked) => Draft | undefined,
): Draft | undefined {
  for (let at = 0; at < tries; at++) {
    const facts = drawn(desk, problem, random);
    if (!isFair(problem, facts)) continue;
    const worked = workedOut(desk, problem, facts);
    const draft = worked && make(worked);
    if (draft) return draft;
  }
  return undefined;
}

function drawn({ units }: Desk, { draws, settled = {} }: Problem, random: Random): Facts {
  const figures = Object.entries(draws).map(([id, [unit, from]]) => {
    const figure = [random.pick(from), unit] as const;
    return [id, units === 'metric' ? inMetric(figure) : figure] as const;
  });
  const options = Object.entries(settled).map(
    ([id, option]) => [id, typeof option === 'string' ? option : random.pick(option)] as const,
  );
  return Object.fromEntries([...figures, ...options]);
}

const isFair = ({ fair }: Problem, facts: Facts): boolean => !fair || fair(baseIn(facts));

/** Facts of a stem in base units. Throws RangeError for one that the stem has not. */
function baseIn(facts: Facts): (id: string) => number {
  return (id) => {
    const fact = facts[id];
    if (fact === undefined || typeof fact === 'string') throw new RangeError(`the stem gives no ${id}`);
    return fact[0] * fromBaseSize(fact[1]);
  };
}

/** `[tons|tonnes]` in a stem: the US word or the metric one. */
const unitsIn = (stem: string, metric: boolean): string =>
  stem.replace(/\[([a-z0-9 ]{1,30})\|([a-z0-9 ]{1,30})\]/g, (_, us: string, si: string) => (metric ? si : us));

/** Base units in one of a unit whose zero is zero. */
const fromBaseSize = (unit: Unit): number => 1 / fromBase(1, unit);

function workedOut({ knowledge, units }: Desk, problem: Problem, facts: Facts): Worked | undefined {
  const voice = voiceOf(knowledge, facts, units);
  const found = voice.solved.get(problem.finds);
  const record = knowledge.quantities.get(problem.finds);
  if (!found?.by || !record) return undefined;
  const metric = units === 'metric';
  const unit = problem.unit ? (metric ? metricUnit(problem.unit) : problem.unit) : record.units[units];
  const asked: Voice = { ...voice, unit: (id) => (id === problem.finds ? unit : voice.unit(id)) };
  const stem = unitsIn(problemStems[problem.id]!, metric).replace(
    /\{([a-z0-9-]{1,40})\}/g,
    (_, id) => sayFact(knowledge, facts, id)!,
  );
  const at = { right: found.value, fact: baseIn(facts) };
  return {
    problem,
    stem: capital(stem),
    record,
    unit,
    voice: asked,
    at,
    tolerance: toleranceOf(record, found.value, unit, units),
    slips: metric
      ? Object.fromEntries(Object.entries(problem.mistakes).filter(([slip]) => !slipsInFeet.has(slip)))
      : problem.mistakes,
  };
}

const stepOf: Readonly<Record<Rounding, number>> = {
  up: 1,
  whole: 1,
  tenth: 0.1,
  hundredth: 0.01,
  thousandth: 0.001,
  eighths: 1 / 16,
};

/** In base units: nothing for what is counted; else two in a hundred, or one step of the rounding up to four in a hundred. */
function toleranceOf(
  { counted, dimension, rounding }: QuantityRecord,
  base: number,
  unit: Unit,
  units: UnitSystem,
): number {
  if (counted || dimension === 'count') return 0;
  const one = Math.abs(base) * 0.02;
  const step = stepOf[rounding?.[units] ?? usualRounding[unit]] * fromBaseSize(unit);
  return Math.max(one, Math.min(step, 2 * one));
}

function toChoose(worked: Worked, random: Random, place: number): Draft | undefined {
  const { record, unit, at, tolerance, slips } = worked;
  const text = (base: number): string => oneFigure(say(record, base, unit, unit === 'in' && isSixteenths(base)));
  const wrong = Object.entries(slips).flatMap(([mistake, of]): Figured[] => {
    const figure = of(at);
    return Number.isFinite(figure) && figure > 0 ? [{ text: text(figure), figure, mistake }] : [];
  });
  const key = { text: text(at.right), figure: at.right, tolerance };
  const taken = chosen(random, key, wrong, place);
  if (!taken) return undefined;
  return {
    ...common(worked, taken),
    item: { ...itemOf(worked), kind: 'one', options: risingOptions(key, taken), key: key.text },
  };
}

function toFillIn(worked: Worked): Draft {
  const { unit, at, tolerance } = worked;
  const number = fromBase(at.right, unit);
  return {
    ...common(worked, []),
    item: {
      ...itemOf(worked),
      kind: 'number',
      options: [],
      key: tolerance === 0 ? Math.round(number) : Number(number.toPrecision(4)),
      tolerance: tolerance === 0 ? 0 : Number((tolerance / fromBaseSize(unit)).toPrecision(2)),
      ...(unit === '1' ? {} : { unit }),
    },
  };
}

/** True for inches that a rule shows: as a fraction they are as plain as any other option. */
const isSixteenths = (base: number): boolean => Math.abs(base * 16 - Math.round(base * 16)) < 1e-6;

/** "3/4 in (0.75 in)" without the second figure, "about 3/4 in (0.781 in)" without the first: an option is one figure. */
const oneFigure = (text: string): string => {
  const both = /^(about )?([^()]{1,40}) \(([^()]{1,40})\)$/.exec(text);
  return both ? (both[1] ? both[3]! : both[2]!) : text;
};

function itemOf({ problem, stem, voice }: Worked): Omit<Draft['item'], 'kind' | 'options' | 'key'> {
  const relation = voice.knowledge.relations.get(voice.solved.get(problem.finds)!.by!.relation.id)!;
  // A line that only hands a figure on says nothing.
  const working = workingOf([problem.finds], voice).filter((step) => step.with !== step.result);
  const lines = working.map((step) => quiz.working(step.formula, step.with, step.result));
  return {
    stem,
    why: [...lines, capital(relation.because)].join(' '),
    rule: `relation/${relation.id}`,
    source: saySource(relation.sources[0]),
  };
}

function common({ problem, voice, at, tolerance }: Worked, wrong: readonly Figured[]): Omit<Draft, 'item'> {
  return {
    order: 'rising',
    rests: sourcesBehind(voice, problem.finds),
    collides: [],
    printed: false,
    unsaid: voice.solved.get(problem.finds)!.assumed,
    numbers: {
      right: at.right,
      tolerance,
      wrong,
      reproduce: (mistake) => (problem.mistakes[mistake] ? [problem.mistakes[mistake](at)] : []),
    },
  };
}
