import { fromBase, toBase } from '../../../calc/quantity.ts';
import type { LimitRecord } from '../../../rules/shapes.ts';
import { say } from '../../say.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { isFirm } from '../facts.ts';
import type { Random } from '../random.ts';
import type { Desk, Draft, Form, Level, Wish } from '../shapes.ts';
import { figureAsked, notTried } from '../topics.ts';
import {
  figuresRound,
  groundOf,
  judgedBy,
  otherScenes,
  situationOf,
  type Trial,
  type Tried,
  trialOf,
} from './limit.ts';
import { chosen, type Figured, risingOptions } from './options.ts';
import { yesOrNo } from './text.ts';

/** The ways to ask about a limit: does this figure hold, which figures hold, what is the figure. */
export function limitForms(desk: Desk, rule: LimitRecord): Form[] {
  const trial = trialOf(desk, rule);
  if (!trial || rule.besideRule || notTried.has(rule.id)) return [];
  const facts = Object.values(rule.examples.holds).filter((fact) => typeof fact !== 'string').length;
  const level: Level = facts > 2 ? 'hard' : facts > 1 ? 'medium' : 'easy';
  const scenes = otherScenes(rule);
  // One time in two the facts of the example, so that a rule is asked as its record has it as well.
  const anyOf = (random: Random): Trial =>
    (scenes.length && random.int(2) ? trialOf(desk, rule, random.pick(scenes)) : undefined) ?? trial;
  const forms: Form[] = [
    { id: 'holds', kind: 'true-false', level, make: (random, wish) => doesItHold(anyOf(random), random, wish) },
  ];
  const [end, other] = [trial.max ?? trial.min, trial.max === undefined ? undefined : trial.min];
  const bare = Object.keys(rule.examples.holds).length === 1 && end !== undefined && other === undefined;
  // A bound of the manual turned into metric is no figure that anybody gives.
  if (!bare || desk.units === 'metric' || !isFirm(rule.sources)) return forms;
  forms.push({ id: 'which-hold', kind: 'many', level: 'medium', make: (random) => whichHold(trial, end, random) });
  if (trial.max !== undefined && figureAsked.has(rule.id)) {
    forms.push({
      id: 'figure',
      kind: 'one',
      level: 'easy',
      make: (random, { place }) => whatIsIt(trial, end, random, place),
    });
  }
  return forms;
}

function doesItHold(trial: Trial, random: Random, { yes }: Wish): Draft | undefined {
  for (const figure of random.shuffle(figuresRound(trial).filter((each) => isSensible(trial, each)))) {
    const tried = trial.try(figure);
    if (tried?.holds !== yes) continue;
    const ground = groundOf(trial, tried);
    if (ground.collides.length) continue;
    const stem = quiz.holds(situationOf(trial, tried));
    return { ...yesOrNo({ stem, ...judgedBy(trial, tried), rests: ground.rests }, quiz, yes), ...ground };
  }
  return undefined;
}

/** Of a least figure nothing far over it, where more is no better, and nothing far under it, which nobody would ask about. */
function isSensible({ min, max, unit }: Trial, figure: number): boolean {
  if (min === undefined || max !== undefined) return true;
  const times = toBase(figure, unit) / min;
  return times >= 0.6 && times <= 1.5;
}

/** Times the bound, by what somebody has in mind who takes that for it. */
const off: Readonly<Record<string, number>> = { halved: 1 / 2, 'half-again': 3 / 2, doubled: 2 };

/** Four figures round the bound, the bound among them; those that break it are the mistakes. */
function whichHold(trial: Trial, end: number, random: Random): Draft | undefined {
  const bound = fromBase(end, trial.unit);
  const whole = trial.rule.on.dimension === 'count';
  const tried = [...Object.values(off), 1].flatMap((factor): Tried[] => {
    const one = whole && !Number.isInteger(bound * factor) ? undefined : trial.try(bound * factor);
    return one ? [one] : [];
  });
  const taken = random
    .shuffle(tried)
    .slice(0, 4)
    .sort((a, b) => a.figure - b.figure);
  const right = taken.filter(({ holds }) => holds);
  const broken = taken.filter(({ holds }) => !holds);
  if (taken.length < 3 || right.length === 0 || broken.length === 0) return undefined;
  if (new Set(taken.map(({ text }) => text)).size < taken.length) return undefined;
  const base = ({ figure }: Tried): number => toBase(figure, trial.unit);
  const wrong = broken.map(
    (each): Figured => ({ text: each.text, figure: base(each), mistake: mistakeAt(base(each) / end) }),
  );
  const options = taken.map(({ text, holds }, at) =>
    holds ? { text } : { text, mistake: mistakeAt(base(taken[at]!) / end) },
  );
  const ground = groundOf(trial, right[0]!);
  return {
    ...ground,
    order: 'rising',
    collides: [...new Set(taken.flatMap((each) => groundOf(trial, each).collides))],
    item: {
      ...judgedBy(trial, broken[0]!),
      kind: 'many',
      stem: quiz.whichHold(trial.rule.title),
      options,
      key: right.map(({ text }) => text),
    },
    numbers: { right: end, tolerance: 0, wrong, reproduce: (mistake) => times(end, mistake) },
  };
}

const mistakeAt = (factor: number): string =>
  Object.entries(off).find(([, each]) => Math.abs(each - factor) < 1e-9)?.[0] ?? 'none';
const times = (end: number, mistake: string): number[] => (off[mistake] === undefined ? [] : [end * off[mistake]]);

function whatIsIt(trial: Trial, end: number, random: Random, place: number): Draft | undefined {
  const { rule, unit } = trial;
  const tried = trial.try(fromBase(end, unit));
  if (!tried?.holds) return undefined;
  const text = (base: number): string => say(rule.on, base, unit, true);
  const wrong = Object.keys(off).map((mistake): Figured => {
    const figure = end * off[mistake]!;
    return { text: text(figure), figure, mistake };
  });
  const key = { text: text(end), figure: end, tolerance: 0 };
  const taken = chosen(random, key, wrong, place);
  if (!taken) return undefined;
  return {
    ...groundOf(trial, tried),
    order: 'rising',
    item: {
      ...judgedBy(trial, tried),
      kind: 'one',
      stem: quiz.mostOf(rule.title),
      options: risingOptions(key, taken),
      key: key.text,
    },
    numbers: { right: end, tolerance: 0, wrong: taken, reproduce: (mistake) => times(end, mistake) },
  };
}
