import { fromBase, toBase } from '../../calc/quantity.ts';
import { asksForSurvey, simpsonWords } from '../../calc/survey/words.ts';
import { type Fact, merge } from '../facts.ts';
import type { Goal } from '../goal.ts';
import type { Understanding } from '../understand.ts';
import type { Heard } from './hear.ts';
import { inUnitOf, type Lack, type Solid, simpsonOf, solidOf } from './solid.ts';

/** Figures of the patch that readings give: said by nobody, so they are not echoed as typed. */
export const surveyed: ReadonlySet<string> = new Set([
  'patch-length',
  'patch-depth',
  'deepest-depth',
  'patch-volume-simpson',
]);

/** Readings in force, what is lacking to work them, and the understanding with the figures they give. */
export interface InForce {
  readonly heard: Heard;
  readonly understood: Understanding;
  readonly solid: Solid | undefined;
  readonly lack: Lack | undefined;
  /** True where the question is about the readings themselves. */
  readonly about: boolean;
}

/** Puts the figures that readings give into what was understood. Undefined where a new size of the patch takes their place. */
export function withSurvey(heard: Heard, understood: Understanding): InForce | undefined {
  const { survey, fresh } = heard;
  const own = understood.fresh.filter(
    ({ quantity }) =>
      quantity === 'patch-depth' || quantity === 'deepest-depth' || (!survey.across && quantity === 'patch-length'),
  );
  if (!fresh && own.length > 0) return undefined;
  const facts = merge(understood.facts, heard.facts);
  const base = (id: string): number | undefined => {
    const fact = facts.find(({ quantity }) => quantity === id);
    return fact && 'unit' in fact ? toBase(fact.number, fact.unit) : undefined;
  };
  const found = solidOf(survey, {
    width: base('patch-width'),
    length: base('patch-length'),
    spacing: base('reading-spacing'),
  });
  const solid = typeof found === 'string' ? undefined : found;
  const given = solid ? factsOf(heard, solid, facts) : [];
  const words = understood.sentence.places;
  const about =
    fresh ||
    understood.isAnswer ||
    (!understood.goalKept && ofReadings.has(understood.goal?.id ?? '')) ||
    asksForSurvey.some((word) => words.has(word)) ||
    survey.rows.some(({ label }) => label?.includes('+') && heard.question.includes(label));
  return {
    heard,
    solid,
    lack: typeof found === 'string' ? found : undefined,
    about,
    understood: {
      ...understood,
      ...(fresh && !understood.units && !heard.wanted ? { system: survey.units.along === 'm' ? 'metric' : 'us' } : {}),
      facts: merge(facts, given),
      fresh: [...understood.fresh, ...heard.facts, ...(fresh ? given : [])],
      ...(about
        ? {
            goal: goalOf(
              understood,
              fresh,
              simpsonWords.some((word) => words.has(word)),
            ),
            goalKept: false,
          }
        : {}),
    },
  };
}

function factsOf({ survey, fresh }: Heard, solid: Solid, known: readonly Fact[]): Fact[] {
  const { along, depth } = survey.units;
  const fact = (quantity: string, number: number, unit: 'ft' | 'm' | 'in' | 'mm'): Fact => ({
    quantity,
    number,
    unit,
    turn: survey.turn,
    ...(fresh ? { fresh: true } : {}),
  });
  const length = known.find(({ quantity }) => quantity === 'patch-length');
  const simpson = simpsonOf(solid, length && 'unit' in length ? toBase(length.number, length.unit) : undefined);
  const volume = (base: number): Fact => ({
    ...fact('patch-volume-simpson', 0, 'ft'),
    number: Number(fromBase(base, along === 'ft' ? 'yd3' : 'm3').toPrecision(15)),
    unit: along === 'ft' ? 'yd3' : 'm3',
  });
  const hasWidth =
    known.some(({ quantity }) => quantity === 'patch-width') && survey.rows.every(({ width }) => width === undefined);
  return [
    ...(solid.length === undefined ? [] : [fact('patch-length', inUnitOf(solid.length, along), along)]),
    ...(hasWidth ? [] : [fact('patch-width', inUnitOf(solid.width, along), along)]),
    fact('patch-depth', inUnitOf(solid.average, depth), depth),
    fact('deepest-depth', inUnitOf(solid.deepest, depth), depth),
    ...(simpson === undefined ? [] : [volume(simpson)]),
  ];
}

const ofReadings: ReadonlySet<string> = new Set([
  'lift-count',
  'deepest-depth',
  'patch-volume',
  'patch-volume-simpson',
]);

/** Tons, unless something else is asked of the readings; of their lows and deepest spots, the lifts. */
function goalOf({ goal, goalKept }: Understanding, fresh: boolean, simpson: boolean): Goal {
  if (simpson) return { kind: 'quantity', id: 'patch-volume-simpson' };
  if (goal && !goalKept && (goal.kind === 'quantity' || goal.kind === 'limit')) return goal;
  return { kind: 'quantity', id: fresh ? 'premix-mass' : 'lift-count' };
}
