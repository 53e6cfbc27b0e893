import type { Dimension } from '../calc/dimension.ts';
import type { Expression } from '../calc/expression.ts';
import type { Rounding } from '../calc/rounding.ts';
import type { Unit, UnitOf } from '../calc/units.ts';
import { unset } from './quantity-fields.ts';
import type { Base, Figure } from './shapes-base.ts';

export type { Base, Figure } from './shapes-base.ts';
export { commonPractice, geometry, type Seen, type Source, type Sources } from './source.ts';

export interface QuantityRecord<D extends Dimension = Dimension> extends Base {
  readonly kind: 'quantity';
  readonly dimension: D;
  readonly units: { readonly us: UnitOf<D>; readonly metric: UnitOf<D> };
  readonly rounding?: { readonly us: Rounding; readonly metric: Rounding };
  /** Counted in whole ones: where a range leads here, the high end is the figure. */
  readonly counted?: boolean;
  /** Words beside a figure that give it this role, nearest wins: `after` follow it (12 ft wide), `before` precede it (width 12). */
  readonly roles?: Roles;
  /** Head words of its own field: its roles count only where one of them stands, and there before those of other quantities. */
  readonly setting?: readonly string[];
  /** Several in one sentence are added up, each named by one of these words: the rates of three machines. */
  readonly summed?: readonly string[];
  /** What a figure of this kind is of when nothing tells: the patch itself. */
  readonly plain?: true;
  /** What a figure is of instead, where words tell that it is no figure of the patch: "right lane closed, 12 ft". */
  readonly insteadOf?: { readonly of: readonly QuantityRecord[]; readonly cues: readonly string[] };
  /** Words that stand for a figure: "no waste", "undiluted", "both wheel paths", "per ton". */
  readonly saidAs?: readonly (Figure<D> & { readonly cues: readonly string[] })[];
  /** How "1:1" and "6:1" are read: the first part's share in the whole (alike only: else which part is which must be asked), or so many to one. */
  readonly parts?: 'share' | 'to-one';
  /** What the share is of: in "3 parts water to 1 part tack" it is the tack's. */
  readonly shareOf?: readonly string[];
  /** Its place in a group like 12 x 300 x 2, where no word tells. */
  readonly inGroup?: 'longest' | 'next' | 'thinnest';
  /** The unit of a number that has none, where this is what it must be. `false`: never without a unit. */
  readonly bare?: false | { readonly us: UnitOf<D>; readonly metric: UnitOf<D> };
  /** A unit that is short for its own where the figure is of its size: "shoot .08 gallons", "at 112 lb". */
  readonly shortUnit?: { readonly unit: Unit; readonly for: UnitOf<D> };
  /** The unit of such a number where `bare` is false but a word before it leaves no doubt: "trucks carry 18". */
  readonly bareTold?: { readonly us: UnitOf<D>; readonly metric: UnitOf<D> };
  /** What to ask when it is missing. `ease` 1 is read off a tape; higher is harder to come by. */
  readonly question?: { readonly text: string; readonly ease: number; readonly choices: readonly Figure<D>[] };
  /** Taken, and said, when nobody says otherwise. `last`: gives way to anything worked out, on however many other defaults. */
  readonly default?: Figure<D> & { readonly low?: number; readonly high?: number; readonly last?: boolean };
  /** Cues for somebody speaking of it without a figure: then it is asked for, and the default does not stand. */
  readonly spokenOf?: readonly string[];
  /**
   * In its place while every choice is one of these: the first that holds. With no figure nothing is taken then, and it is
   * asked for. It may stand without a `default`: then nothing is taken unless one of them holds.
   */
  readonly defaultWhen?: readonly { readonly when: readonly Condition[]; readonly figure?: Figure<D> }[];
  /** Outside this a figure is asked back before anything is worked from it. */
  readonly plausible?: { readonly min: Figure<D>; readonly max: Figure<D> };
  /** The question that asks for it, as a person would put it: offered as a next question. */
  readonly asks?: string;
  /** A share that the asker names is added to it when it is asked for: waste on tons and on tack. */
  readonly adds?: QuantityRecord<'ratio'>;
  /** Stands in for another quantity until it is settled which: the answer is given under that one. */
  readonly standsIn?: true;
  /** Answers for another quantity that cannot be worked out where this one can: the depth put down for the depth of the patch. */
  readonly answersFor?: QuantityRecord;
  /** A quantity that people give in the same words, so that they do not keep the two apart: tons put down, in the patch, on a truck. */
  readonly saidLike?: QuantityRecord<D>;
  /** Which figure asked about is good: one no smaller (where none is named), no larger, as a tank covers so many feet, or only the same, as a setting. */
  readonly enough?: 'no-larger' | 'the-same';
  /** What is needed of what there is: trucks on the job are held against the trucks needed. */
  readonly heldAgainst?: QuantityRecord;
  /** What a foreman wants to see beside it. */
  readonly beside?: readonly string[];
  /** Stages of the job where the figure is used (ids of steps). */
  readonly usedAt?: readonly string[];
  /** A sentence that must go with it: what it leaves out, what it is taken from. */
  readonly note?: string;
  readonly caution?: string;
  /** Set when an agency's figure stands in place of the general ones. */
  readonly agency?: { readonly name: string; readonly general?: Figure; readonly when?: QuantityRecord['defaultWhen'] };
}

/** A fact that is one of a few words, not a figure. */
export interface ChoiceRecord extends Base {
  readonly kind: 'choice';
  readonly options: readonly ChoiceOption[];
  readonly question?: { readonly text: string; readonly ease: number };
  /** Taken, and said, when nobody says otherwise. */
  readonly default?: string;
  /** Settled, `us` or `metric`, by the unit in which this figure was given: nobody is asked, and nothing is assumed then. */
  readonly settledByUnitOf?: QuantityRecord;
}

export interface ChoiceOption {
  readonly id: string;
  readonly title: string;
  readonly cues: readonly string[];
  /** Words that choose it only while a figure lies within these ends, both included. */
  readonly within?: {
    readonly cues: readonly string[];
    readonly of: QuantityRecord;
    readonly min?: Figure;
    readonly max?: Figure;
  };
}

/** Facts of an example: figures with their units, and choices. */
export type Facts = Readonly<Record<string, readonly [number: number, unit: Unit] | string>>;
export interface RelationRecord extends Base {
  readonly kind: 'relation';
  readonly finds: QuantityRecord;
  readonly by: Expression;
  readonly bothWays?: boolean;
  readonly second?: boolean;
  readonly third?: boolean;
  /** Members it is never solved for: a count, a setting. */
  readonly keeps?: readonly QuantityRecord[];
  /** Members that must have been said, not worked out: what was figured from the deepest spot must not come back as the average. */
  readonly said?: readonly QuantityRecord[];
  /** A plan or a rule of thumb, not an identity: a figure said otherwise is no contradiction. */
  readonly plan?: boolean;
  /** Holds only while each choice is one of these. */
  readonly when?: readonly Condition[];
  /** Published or hand-checked: from `given` comes `finds`. The tests take each member in turn as the unknown. */
  readonly examples: readonly [RelationExample, ...RelationExample[]];
  /** Said with an answer that came by this way. */
  readonly note?: string;
  /** Said only where the figure found is another than the one it was rounded from. */
  readonly noteIfRounded?: string;
  /** Set when an agency's figure stands in place of the general one, or beside it. */
  readonly agency?: { readonly name: string; readonly general: Expression };
}

export interface RelationExample {
  readonly given: Facts;
  readonly finds: readonly [number: number, unit: Unit];
  /** Relative; for a printed answer that was rounded. 1e-9 when absent. */
  readonly within?: number;
  readonly source: string;
}

/** Head words near a figure that give it its role; those beside it count only right after, nothing between. */
export type Roles = Readonly<Partial<Record<'after' | 'before' | 'beside' | 'of', readonly string[]>>>;
export interface Condition {
  readonly choice: ChoiceRecord;
  readonly is: readonly string[];
}

/** A figure that a quantity must have reached. */
export interface From {
  readonly quantity: QuantityRecord;
  readonly atLeast: Figure;
}

export type Severity = 'caution' | 'stop';

/** A limit on a figure: at most, at least, or both. The bound is a quantity of the same dimension, or a figure of its own. */
export interface LimitRecord<D extends Dimension = Dimension> extends Base {
  readonly kind: 'limit';
  readonly on: QuantityRecord<D>;
  readonly max?: QuantityRecord<NoInfer<D>> | Figure<NoInfer<D>>;
  readonly min?: QuantityRecord<NoInfer<D>> | Figure<NoInfer<D>>;
  readonly breaks: Severity;
  /** The most `max` can be while it is not known itself: reached, the rule is broken whatever `max` turns out to be. */
  readonly ceiling?: { readonly is: QuantityRecord<NoInfer<D>>; readonly text: string };
  /** Where a broken `caution` becomes a `stop`: from this figure on, itself included. */
  readonly stopFrom?: Figure<NoInfer<D>>;
  /** The same, from above this figure only. */
  readonly stopOver?: Figure<NoInfer<D>>;
  /** The bound itself breaks it: "over an inch", where an inch is not enough. */
  readonly strict?: boolean;
  /** Applies only while each choice is one of these; an unsettled one means it cannot be told. */
  readonly when?: readonly Condition[];
  /** Applies only from this figure up, itself included. */
  readonly from?: From;
  /** In place of bounds of its own: the first case whose conditions hold gives them. */
  readonly cases?: readonly LimitCase<D>[];
  /** The rule it is part of, where one name covers several bounds: verdicts are given under that name. */
  readonly underRule?: string;
  /** What a question about it supposes, as "in one lift" does: it is what is asked about, and not kept for the next. */
  readonly supposes?: readonly QuantityRecord[];
  /** A rule shown beside another one, which gives the verdict. */
  readonly besideRule?: string;
  /** Sentences with `{quantity-id}` for the figures at hand, `{limit}` for the bound and `{on}` for the figure judged. */
  readonly text: {
    readonly ok: string;
    readonly caution?: string;
    readonly stop?: string;
    readonly cannotTell: string;
    /** Why it does not apply, where that is worth saying. */
    readonly notApplicable?: string;
  };
  /** What to do when it is broken. */
  readonly fix: string;
  /** Set when an agency's bounds, at these ends, stand in place of the general rule's. */
  readonly agency?: { readonly name: string; readonly ends: readonly ('min' | 'max')[]; readonly general: LimitRecord };
  readonly examples: {
    readonly holds: Facts;
    readonly boundary: Facts;
    readonly breaks: Facts;
    readonly cannotTell: Facts;
    /** Further ones, each with what comes out: one for every case. */
    readonly also?: readonly {
      readonly facts: Facts;
      readonly is: Severity | 'ok' | 'cannot-tell' | 'not-applicable';
    }[];
  };
}

/** Bounds, and where they differ the gravity and the words, while each choice is one of these. */
export interface LimitCase<D extends Dimension = Dimension> {
  readonly when: readonly Condition[];
  readonly max?: QuantityRecord<NoInfer<D>> | Figure<NoInfer<D>>;
  readonly min?: QuantityRecord<NoInfer<D>> | Figure<NoInfer<D>>;
  readonly breaks?: Severity;
  readonly stopFrom?: Figure<NoInfer<D>>;
  readonly strict?: boolean;
  readonly text?: LimitRecord['text'];
  readonly fix?: string;
}

/** A rule on something done one way or another. */
export interface PracticeRecord extends Base {
  readonly kind: 'practice';
  readonly on: ChoiceRecord;
  /** The rule it is part of, under whose name verdicts are given. */
  readonly underRule?: string;
  /** What each option means; an option not named here holds. */
  readonly judged: Judged;
  readonly when?: readonly Condition[];
  /** In place of `judged`, while every condition holds: the first such case. */
  readonly cases?: readonly { readonly when: readonly Condition[]; readonly judged: Judged }[];
  readonly cannotTell: string;
  readonly fix: string;
  /** Where cases differ: what comes out of which facts. */
  readonly examples?: readonly {
    readonly facts: Facts;
    readonly is: Severity | 'ok' | 'cannot-tell' | 'not-applicable';
  }[];
}

export type Judged = Readonly<Record<string, { readonly status: 'ok' | Severity; readonly text: string }>>;
export type TableRecord = FigureTable | ChoiceTable;

/** A table read by one figure. */
export interface FigureTable<D extends Dimension = Dimension, V extends Dimension = Dimension> extends Base {
  readonly kind: 'table';
  readonly key: { readonly dimension: D; readonly unit: UnitOf<D> };
  readonly value: { readonly dimension: V; readonly unit: UnitOf<V> };
  /** As printed, in rising order of the key; between two rows the next one up is taken. */
  readonly rows: readonly (readonly [key: number, value: number])[];
  readonly between: 'next row up';
  /** Said when a figure lies past its last row: nothing is worked out then. */
  readonly beyond?: string;
}

/** A table read by a choice: a row of figures for each option, as printed. Every figure becomes a relation. */
export interface ChoiceTable extends Base {
  readonly kind: 'choice-table';
  readonly by: ChoiceRecord;
  /** What each column is called in the table, what it finds, and its unit. */
  readonly columns: readonly { readonly name: string; readonly finds: QuantityRecord; readonly unit: Unit }[];
  /** Figures of each option in the order of the columns. */
  readonly rows: Readonly<Record<string, readonly number[]>>;
  /** Set when some rows are an agency's own. */
  readonly agency?: { readonly name: string };
}

export type RuleRecord = QuantityRecord | ChoiceRecord | RelationRecord | LimitRecord | PracticeRecord | TableRecord;
const everyField: Readonly<Record<keyof QuantityRecord, undefined>> = unset;

/** A quantity: something with a figure. */
export function quantity<const D extends Dimension>(record: Omit<QuantityRecord<D>, 'kind'>): QuantityRecord<D> {
  return { ...everyField, kind: 'quantity', ...record } as QuantityRecord<D>;
}
/** A fact with a few possible words. */
export const choice = (record: Omit<ChoiceRecord, 'kind'>): ChoiceRecord => ({ kind: 'choice', ...record });
/** A formula that joins quantities. */
export const relation = (record: Omit<RelationRecord, 'kind'>): RelationRecord => ({ kind: 'relation', ...record });
/** A limit on a quantity; a bound of another dimension does not compile. */
export function limit<D extends Dimension>(record: Omit<LimitRecord<D>, 'kind'>): LimitRecord<D> {
  return { kind: 'limit', ...record };
}
/** A rule on how something is done. */
export const practice = (record: Omit<PracticeRecord, 'kind'>): PracticeRecord => ({ kind: 'practice', ...record });
/** A published table read by one figure. */
export function table<const D extends Dimension, const V extends Dimension>(
  record: Omit<FigureTable<D, V>, 'kind'>,
): FigureTable<D, V> {
  return { kind: 'table', ...record };
}
/** A published table read by a choice. */
export const choiceTable = (record: Omit<ChoiceTable, 'kind'>): ChoiceTable => ({ kind: 'choice-table', ...record });

/** True for a quantity that stands as a bound, false for a figure written in the limit itself. */
export function isQuantity<D extends Dimension>(bound: QuantityRecord<D> | Figure<D>): bound is QuantityRecord<D> {
  return 'kind' in bound;
}
