import type { Engine } from '../engine.ts';
import type { Book } from './book.ts';
import type { Change } from './change.ts';
import type { Role } from './roles.ts';

/** Whoever does something on the page of a job. */
export interface Actor {
  readonly engine: Engine;
  readonly role: Role;
  readonly changes: readonly Change[];
  /** The book as it stood on the page they saw: what they write takes the place of that and of nothing newer. */
  readonly seen: Book;
  /** The book as it is now. */
  readonly now: Book;
  /** A stamp for the next change, each later than the last. */
  readonly stamp: () => string;
  readonly by?: string | undefined;
  /** The day that lies so many days back, where the maker stands. */
  readonly day?: ((back: number) => string) | undefined;
}

export interface Done {
  readonly changes: readonly Change[];
  readonly said: readonly string[];
  /** Rows of a list that must be mended, to stand in the box again. */
  readonly draft?: string;
}
export interface Refused {
  readonly fault: string;
}

/** A field of the form; empty when it was not sent. */
export type Field = (name: string) => string;
