import { toBase } from '../calc/quantity.ts';
import type { Known } from '../calc/solve.ts';
import { type Unit, unitRow } from '../calc/units.ts';
import { type Knowledge, optionFact } from '../rules/knowledge.ts';
import type { Bound } from './bind.ts';
import type { GivenFact, Job, JobFact, KeptFact, Span } from './reply.ts';

/** A fact of the conversation: a figure in its unit, or a choice; said in this question, or kept from an earlier turn. */
export type Fact = {
  readonly quantity: string;
  readonly turn: number;
  /** True for one said in this question, and where it stands there; a choice, or a figure in words, is heard in the whole of it. */
  readonly fresh?: true;
  readonly from?: Span;
  readonly unitAssumed?: boolean;
} & (
  | { readonly number: number; readonly unit: Unit; readonly low?: number; readonly high?: number }
  | { readonly choice: string }
);

/** The fact a bound figure says. A range keeps both its ends. */
export function factOf({ record, figure, unit, unitAssumed }: Bound, turn: number): Fact {
  const ends = figure.low !== undefined && figure.high !== undefined ? { low: figure.low, high: figure.high } : {};
  return { quantity: record.id, number: figure.number, unit, ...ends, turn, fresh: true, from: figure.at, unitAssumed };
}

/** New facts over old ones: what is said again replaces what was said before. */
export function merge(old: readonly Fact[], fresh: readonly Fact[]): Fact[] {
  const said = new Set(fresh.map((fact) => fact.quantity));
  return [...old.filter((fact) => !said.has(fact.quantity)), ...fresh];
}

/** New facts over old ones where the asker takes something back: an old fact with the very figure of a new one was misread. */
export function corrected(old: readonly Fact[], fresh: readonly Fact[]): Fact[] {
  const figures = new Set(fresh.flatMap((fact) => ('unit' in fact ? [fact.number] : [])));
  return merge(
    old.filter((fact) => !('unit' in fact) || !figures.has(fact.number)),
    fresh,
  );
}

/** Facts as the solver takes them, in base units; the same ones for the same facts. */
export function knownFrom(facts: readonly Fact[]): readonly Known[] {
  const known = taken.get(facts) ?? inBase(facts);
  taken.set(facts, known);
  return known;
}

const taken = new WeakMap<readonly Fact[], readonly Known[]>();

const inBase = (facts: readonly Fact[]): Known[] =>
  facts.map((fact) => {
    if ('choice' in fact) return { id: optionFact(fact.quantity, fact.choice), value: 1 };
    const base = (number: number) => toBase(number, fact.unit);
    const { number, low = number, high = number } = fact;
    return { id: fact.quantity, value: base(number), low: base(low), high: base(high) };
  });

/** Facts of the job that an earlier reply sent back; one that no record knows, or of another dimension, is left out. */
export function factsOfJob({ facts }: Job, { quantities, choices }: Knowledge): Fact[] {
  return facts.filter((fact) => {
    if ('choice' in fact) return choices.get(fact.quantity)?.options.some((option) => option.id === fact.choice);
    const record = quantities.get(fact.quantity);
    return (
      record?.dimension === unitRow(fact.unit).dimension &&
      [fact.number, fact.low, fact.high].every((number) => number === undefined || isSane(number, fact.unit))
    );
  });
}

/** Beyond these no figure of a road job lies, in base units; nothing at all is one. */
const farBeyond = 1e12;
const farBelow = 1e-9;

const isSane = (number: number, unit: Unit): boolean => {
  const size = Math.abs(toBase(number, unit));
  return number === 0 || (size < farBeyond && size > farBelow);
};

/** Facts as the next job carries them. */
export const jobFacts = (facts: readonly Fact[]): JobFact[] =>
  facts.map(({ from: _from, fresh: _fresh, unitAssumed: _assumed, ...fact }) => fact as JobFact);

/** What was read in this question. */
export function givenOf(facts: readonly Fact[]): GivenFact[] {
  return facts.flatMap((fact): GivenFact[] => {
    if (!fact.fresh) return [];
    if ('choice' in fact) return [{ quantity: fact.quantity, choice: fact.choice }];
    const { number, unit } = shown(fact.number, fact.unit);
    const ends =
      fact.low !== undefined && fact.high !== undefined
        ? { low: shown(fact.low, fact.unit).number, high: shown(fact.high, fact.unit).number }
        : {};
    return [{ quantity: fact.quantity, number, unit, ...ends, ...(fact.from ? { from: fact.from } : {}) }];
  });
}

/** Facts of earlier turns that an answer used. */
export function keptOf(facts: readonly Fact[], used: ReadonlySet<string>): KeptFact[] {
  return facts.flatMap((fact): KeptFact[] => {
    if (fact.fresh) return [];
    if ('choice' in fact)
      return used.has(optionFact(fact.quantity, fact.choice))
        ? [{ quantity: fact.quantity, choice: fact.choice, turn: fact.turn }]
        : [];
    return used.has(fact.quantity)
      ? [{ quantity: fact.quantity, ...shown(fact.number, fact.unit), turn: fact.turn }]
      : [];
  });
}

const standIn: Partial<Record<Unit, Unit>> = {
  acre: 'yd2',
  ha: 'm2',
  'kg/m2/cm': 'kg/m2/mm',
  't/m3': 'kg/m3',
  'ton/yd3': 'lb/ft3',
  'ton/yd2': 'lb/yd2',
  'gal/ft2': 'gal/yd2',
};

/** A figure in a unit that replies use; one that is only read (acres) is turned into its stand-in. */
export function shown(number: number, unit: Unit): { number: number; unit: Unit } {
  const other = standIn[unit];
  if (!other || unitRow(unit).shown) return { number, unit };
  const [a, b] = [unitRow(unit).size, unitRow(other).size];
  return { number: Number(((number * a[0] * b[1]) / (a[1] * b[0])).toPrecision(12)), unit: other };
}
