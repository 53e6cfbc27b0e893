import type { Base, ChoiceRecord, Condition, Figure, QuantityRecord, Source } from './shapes.ts';

/**
 * Sentences of the work are templates: `{lift-loose}` is a figure of the job and stands only inside `[[…]]`, a clause that
 * falls away when one of its figures is unknown; `[[…|…]]` has another clause to stand in its place. `{max:flush-finish}` and
 * `{min:…}` are the bounds of a limit. `{lift}` is the number of the lift in hand.
 */
export type Template = string;

/** Something that must be so before a step begins, and what to say while it is not. */
export interface Need {
  /** Met while the choice is one of these; unmet while it is another; to be looked at while it is unsettled. */
  readonly met: Condition;
  /** What to look for. */
  readonly text: string;
  /** What to do while it is not so. */
  readonly unmet: string;
  /** The rule behind it. */
  readonly rule: string;
}

/** When a sentence of a step is said: by the place of the lift, or by a settled choice. */
export interface Occasion {
  readonly lift?: 'first' | 'odd' | 'even';
  readonly lifts?: 'one' | 'odd' | 'even';
  readonly choice?: Condition;
}

/** One stage of the job. */
export interface StepRecord extends Base {
  readonly kind: 'step';
  /** What is done, in a few sentences. */
  readonly text: Template;
  /** Said after the text on these occasions only. */
  readonly also?: readonly { readonly on: Occasion; readonly text: Template }[];
  /** How the operator does it: points of the craft, told when this step alone is asked for. */
  readonly craft?: readonly { readonly title: string; readonly text: Template }[];
  readonly before?: readonly Need[];
  readonly checks: readonly Template[];
  /** Ways to get hurt here, the one that bites first. */
  readonly cautions: readonly string[];
  /** What good looks like. */
  readonly good: Template;
  /** Ids of the limits and practices that bear on it. */
  readonly rules: readonly string[];
  /** Head words that name the step, as in "before …" and "done with …": each line one way. */
  readonly named: readonly string[];
  /** What people say when it is done. */
  readonly doneCues: readonly string[];
  /** What people say while they are at it. */
  readonly atCues?: readonly string[];
}

/** A cause of a fault, with its remedy. */
export interface FaultCause {
  readonly text: Template;
  readonly remedy: Template;
  /** Id of the rule that was broken; the fault itself where no rule speaks of it. */
  readonly rule?: string;
  readonly source: Source;
  /** The cause, or not, once this is settled. */
  readonly when?: Condition;
}

/** Something wrong in the mat. */
export interface FaultRecord extends Base {
  readonly kind: 'fault';
  readonly cues: readonly [string, string, ...string[]];
  /** What is seen, in the crew's words, to stand after "you see". */
  readonly seen: string;
  /** Likeliest first. */
  readonly causes: readonly [FaultCause, ...FaultCause[]];
  /** What to do about this mat. */
  readonly now: Template;
  /** What to change from here on. */
  readonly nextTime: Template;
  /** The one question that tells it from its look-alikes; an answer may lead to another fault or to a defect. */
  readonly apart?: {
    readonly by: ChoiceRecord;
    /** Asked only where one of these is heard, words that say no more than the look-alike; absent: whenever it is unsettled. */
    readonly heard?: readonly string[];
    readonly leads?: Readonly<Record<string, { readonly fault: string } | { readonly defect: string }>>;
  };
  readonly caution?: string;
  readonly examples: {
    readonly finds: readonly [string, string, ...string[]];
    readonly not: readonly [string, ...string[]];
  };
}

/** A figure of the road, the first of these that is known, within ends: `from` and `upTo` included, `over` and `under` not. */
export interface Measured {
  readonly of: readonly [QuantityRecord, ...QuantityRecord[]];
  readonly from?: Figure;
  readonly upTo?: Figure;
  readonly over?: Figure;
  readonly under?: Figure;
}

/** Something that must be found of a defect: a choice settled so, or a figure within its ends. */
export type Finding = Condition | Measured;

/** One line of the choice of a repair: the first whose findings all hold is taken. */
export interface Decision {
  /** What must be so; it is asked for while it is unknown. */
  readonly when: readonly Finding[];
  /** What must be so as well, but is never asked for: unsaid is taken for not so. */
  readonly ifSaid?: readonly Finding[];
  /** Id of the repair. */
  readonly repair: string;
  readonly because: string;
  readonly source: Source;
  /** It buys time and does not cure: said so. */
  readonly holding?: boolean;
  /** Ids of what is done before it, or with it. */
  readonly with?: readonly string[];
  /** The engineer is called as well. */
  readonly engineer?: boolean;
}

export type SeverityClass = 'low' | 'moderate' | 'high';

/** Published classes of severity, by one figure: each class up to and including its bound, high above. */
export interface SeverityScale {
  readonly scheme: string;
  readonly source: Source;
  readonly by: readonly [QuantityRecord, ...QuantityRecord[]];
  /** Below this nothing is rated. */
  readonly from?: Figure;
  readonly low: Figure;
  /** The bound of the low class belongs to the next one, as some tables print it. */
  readonly lowUnder?: boolean;
  readonly moderate: Figure;
}

/** Published classes of severity, by what is seen. */
export interface SeverityBySight {
  readonly scheme: string;
  readonly source: Source;
  readonly sight: ChoiceRecord;
  readonly classes: Readonly<Record<string, SeverityClass>>;
}

/** Published classes by two figures: a row for each band of the first, a class for each band of the second. */
export interface SeverityGrid {
  readonly scheme: string;
  readonly source: Source;
  readonly rows: {
    readonly by: readonly [QuantityRecord, ...QuantityRecord[]];
    readonly from: Figure;
    readonly upTo: readonly Figure[];
  };
  readonly columns: {
    readonly by: readonly [QuantityRecord, ...QuantityRecord[]];
    readonly from: Figure;
    readonly upTo: readonly Figure[];
  };
  readonly classes: readonly (readonly SeverityClass[])[];
}

/** Something wrong with the old road. */
export interface DefectRecord extends Base {
  readonly kind: 'defect';
  readonly cues: readonly [string, ...string[]];
  /** What is seen. */
  readonly seen: string;
  readonly decisions: readonly [Decision, ...Decision[]];
  readonly severity?: readonly (SeverityScale | SeverityBySight | SeverityGrid)[];
  /** Said where no severity is published: what to record in its place. */
  readonly recorded?: string;
}

/** A repair. */
export interface RepairRecord extends Base {
  readonly kind: 'repair';
  /** Head words that name it, as in "hand patch it?": each line one way. */
  readonly named: readonly string[];
  /** What it is, and how it is done, in order. */
  readonly how: readonly [string, ...string[]];
  readonly rules: readonly string[];
  readonly caution: string;
}

/** A stage of the job. */
export function step(record: Omit<StepRecord, 'kind'>): StepRecord {
  return { kind: 'step', ...record };
}
/** Something wrong in the mat. */
export function fault(record: Omit<FaultRecord, 'kind'>): FaultRecord {
  return { kind: 'fault', ...record };
}
/** A repair. */
export function repair(record: Omit<RepairRecord, 'kind'>): RepairRecord {
  return { kind: 'repair', ...record };
}
/** Something wrong with the old road. */
export function defect(record: Omit<DefectRecord, 'kind'>): DefectRecord {
  return { kind: 'defect', ...record };
}
