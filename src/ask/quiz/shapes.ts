import type { Knowledge } from '../../rules/knowledge.ts';
import type { Source } from '../../rules/shapes.ts';
import type { QuizItem, UnitSystem } from '../reply.ts';
import type { Random } from './random.ts';

export const levels = ['easy', 'medium', 'hard'] as const;
export type Level = (typeof levels)[number];

export const kinds = ['true-false', 'one', 'many', 'order', 'number'] as const;
export type ItemKind = QuizItem['kind'];

/** What a maker is asked for, so that a set comes out even. */
export interface Wish {
  /** For yes-or-no items: the answer it should have. */
  readonly yes: boolean;
  /** For choose-one items: the place the key should have, counted from nothing. */
  readonly place: number;
}

/** The figures behind the options of an item, for its checks. All in base units. */
export interface Numbers {
  readonly right: number;
  /** Everything nearer to the key than this counts as right. */
  readonly tolerance: number;
  readonly wrong: readonly { readonly text: string; readonly figure: number; readonly mistake: string }[];
  /** What a mistake gives here, worked out anew: several where it is the reading of a wrong row. Empty for one that has no formula. */
  readonly reproduce: (mistake: string) => readonly number[];
}

/** An item before it has its place in a set, with what its checks need to know. */
export interface Draft {
  readonly item: Omit<QuizItem, 'id' | 'topic' | 'level'>;
  /** `rising`: figures in rising order; `free`: the options may stand anyhow; `fixed`: as they are. */
  readonly order: 'rising' | 'free' | 'fixed';
  /** Every source the key rests on. */
  readonly rests: readonly Source[];
  /** Ids of rules that collide with the one asked about, on the figures of the stem. */
  readonly collides: readonly string[];
  /** The stem prints the rule and whose it is, so nothing rests on the source. */
  readonly printed: boolean;
  /** Defaults that the key rests on and the stem does not say. */
  readonly unsaid: readonly string[];
  readonly numbers?: Numbers;
}

/** One way to ask about a point. Gives nothing when this draw does not come to a fair item. */
export interface Form {
  readonly id: string;
  readonly kind: ItemKind;
  readonly level: Level;
  readonly make: (random: Random, wish: Wish) => Draft | undefined;
}

/** One thing that can be asked about; a set asks about it once. */
export interface Point {
  /** Address of the record, or of the problem: `limit/roller-speed`. */
  readonly id: string;
  /** Points of one group test the same thing: a set has one of them. */
  readonly group: string;
  readonly topics: readonly [string, ...string[]];
  readonly mustPass: boolean;
  readonly forms: readonly Form[];
}

/** What the makers work from. */
export interface Desk {
  readonly knowledge: Knowledge;
  /** Figures are drawn and asked for in these. */
  readonly units: UnitSystem;
}

/** A finished item with its draft, as the checks take it. */
export interface Made {
  readonly item: QuizItem;
  readonly draft: Draft;
  readonly point: string;
  /** Names the point and its form, the same in every set. */
  readonly token: string;
  /** It has to be in the set: it is not swapped for another. */
  readonly must: boolean;
}
