import type { Unit } from '../calc/units.ts';
import type { JobSurvey, Survey } from './survey/shape.ts';

/** A place in the question as it was sent, in UTF-16 positions. */
export type Span = readonly [start: number, end: number];

export type Kind = 'value' | 'verdict' | 'steps' | 'fault' | 'repair' | 'card' | 'quiz' | 'clarify' | 'unknown';

/** Why there is no answer (kinds clarify and unknown). */
export type Reason =
  | 'no-goal'
  | 'missing-fact'
  | 'ambiguous'
  | 'unit-missing'
  | 'unit-wrong'
  | 'conflict'
  | 'out-of-range'
  | 'no-rule'
  | 'out-of-scope';

export type Status = 'ok' | 'caution' | 'stop' | 'cannot-tell' | 'not-applicable';

export type UnitSystem = 'us' | 'metric';
export type Language = 'en' | 'es';

/** A figure in a unit, or one of a few words. */
export type Said = { readonly number: number; readonly unit: Unit } | { readonly choice: string };

export interface Value {
  readonly quantity: string;
  readonly number: number;
  readonly unit: Unit;
  readonly text: string;
  readonly low?: number;
  readonly high?: number;
}

/** A fact read in the question. A figure stands at one place; a choice, and a figure said in words, is heard in the whole of it. */
export type GivenFact = { readonly quantity: string } & (
  | {
      readonly number: number;
      readonly unit: Unit;
      readonly from?: Span;
      readonly low?: number;
      readonly high?: number;
    }
  | { readonly choice: string }
);
export type KeptFact = { readonly quantity: string; readonly turn: number } & Said;
export type AssumedFact = { readonly quantity: string; readonly rule: string; readonly text: string } & Said;

export interface Ignored {
  readonly text: string;
  readonly from: Span;
  readonly why: string;
}

export interface Verdict {
  readonly rule: string;
  readonly status: Status;
  readonly text: string;
  readonly needs?: readonly string[];
}

export interface Check extends Verdict {
  readonly source: string;
}

export interface Step {
  readonly id: string;
  readonly lift?: number;
  readonly title: string;
  readonly text: string;
  readonly checks: readonly string[];
  readonly cautions: readonly string[];
}

export interface Working {
  readonly quantity: string;
  readonly formula: string;
  readonly with: string;
  readonly result: string;
  readonly rule: string;
  readonly source: string;
}

export interface Cause {
  readonly text: string;
  readonly remedy: string;
  readonly rule: string;
}

export interface CardHit {
  readonly id: string;
  readonly title: string;
  readonly excerpt: string;
  readonly score: number;
}

export interface Choice {
  readonly text: string;
  /** What is sent when it is chosen. */
  readonly send: string;
}

export interface Clarify {
  readonly quantity: string;
  readonly text: string;
  readonly choices: readonly Choice[];
}

/** One thing of a layout, where it begins as traffic comes to it. */
export interface Place {
  readonly what: string;
  readonly at: number;
  readonly unit: Unit;
  /** `approach`: `at` is measured from the near end of the work; `past`: from its far end. */
  readonly side?: string;
  /** Which part it is, the same in every language. */
  readonly part?: string;
  /** How far it reaches, in the same unit. */
  readonly length?: number;
  /** The widest its devices may stand apart, in the same unit. */
  readonly spacing?: number;
  /** The same figures in words, rounded as they are said everywhere. */
  readonly atText?: string;
  readonly lengthText?: string;
  readonly spacingText?: string;
}

/** How many of a thing the truck has to carry. */
export interface Load {
  readonly part: string;
  readonly what: string;
  readonly count: number;
  /** The count where the work space has room to turn at both ends, if that takes more. */
  readonly withRoom?: number;
}

export interface QuizItem {
  readonly id: string;
  readonly kind: 'one' | 'many' | 'order' | 'number' | 'true-false';
  readonly topic: string;
  readonly level: string;
  readonly seat?: string;
  readonly stem: string;
  readonly options: readonly { readonly text: string; readonly mistake?: string }[];
  readonly key: string | number | readonly string[];
  readonly tolerance?: number;
  readonly unit?: string;
  readonly why: string;
  readonly rule: string;
  readonly source: string;
  readonly mustPass?: boolean;
  /** Id of the drawing that the question is about. */
  readonly drawing?: string;
}

export interface Quiz {
  readonly seed: string;
  readonly title: string;
  /** Where the page shows the set: to print, take, change and save it. */
  readonly address?: string;
  readonly items: readonly QuizItem[];
}

/** The one answer that every door gives. Lists with nothing in them are `[]`. */
export interface Reply {
  readonly kind: Kind;
  readonly topic: string;
  readonly text: string;
  readonly values: readonly Value[];
  readonly verdict?: Verdict;
  readonly checks: readonly Check[];
  readonly steps: readonly Step[];
  readonly given: readonly GivenFact[];
  readonly kept: readonly KeptFact[];
  readonly ignored: readonly Ignored[];
  readonly assumed: readonly AssumedFact[];
  readonly working: readonly Working[];
  readonly causes: readonly Cause[];
  readonly cards: readonly CardHit[];
  readonly clarify?: Clarify;
  readonly reason?: Reason;
  readonly layout: readonly Place[];
  readonly load: readonly Load[];
  /** Depth readings across and along the patch, where the answer rests on them. */
  readonly survey?: Survey;
  readonly quiz?: Quiz;
  readonly cautions: readonly string[];
  readonly next: readonly string[];
  readonly rules: { readonly version: string };
  readonly job: Job;
}

/** A fact as the job carries it from turn to turn. */
export type JobFact = {
  readonly quantity: string;
  readonly turn: number;
  readonly low?: number;
  readonly high?: number;
} & Said;

/** The whole memory of a conversation. It travels with the request; callers send back what they were sent. */
export interface Job {
  readonly v: 1;
  readonly turn: number;
  readonly facts: readonly JobFact[];
  /** What the last question was after, as `kind/id`. */
  readonly goal?: string;
  /** The units the asker has asked for. */
  readonly units?: UnitSystem;
  /** The quantity the last reply asked for. */
  readonly asked?: string;
  /** The quantity of which the last reply held the asker's own figure against the need. */
  readonly checked?: string;
  readonly stage?: string;
  /** The patches put on the job. */
  readonly book?: TalkBook;
  /** Depth readings sent in an earlier turn. */
  readonly survey?: JobSurvey;
}

/** Patches that a conversation carries, and how the last change of them is taken back. */
export interface TalkBook {
  readonly patches: readonly TalkPatch[];
  /** The patch that was changed last, as it was before; without one it was not there. */
  readonly undo?: { readonly label: string; readonly patch?: TalkPatch };
}

export interface TalkPatch {
  readonly label: string;
  readonly facts: readonly JobFact[];
  /** Tons down so far, and how far along the patch they reach. */
  readonly laid?: { readonly number: number; readonly unit: Unit };
  readonly laidTo?: { readonly number: number; readonly unit: Unit };
  readonly done?: true;
}

export interface Request {
  readonly question: string;
  /** Whatever the last reply returned; anything else is dropped, and said. */
  readonly job?: unknown;
  readonly units?: UnitSystem;
  readonly lang?: Language;
  readonly agency?: unknown;
  /** A published file of what machines cost an hour. */
  readonly rates?: unknown;
}
