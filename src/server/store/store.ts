/**
 * What crews share is kept as logs: lists of entries that only grow. A job is a log of changes, a class a log of results,
 * the questions that found no answer are one more. A log is named `kind/id`.
 *
 * A promise that resolves means that the thing is on disk. All of them reject with a `StoreFault`, which says in plain
 * words what is wrong and what to do.
 */
export interface Store {
  /**
   * Adds entries, in order, to the end of a log and starts the log if there is none. An entry whose id is there already
   * is not added again, so that sending twice does no harm. Where the log would have more than `most`, none is added.
   */
  append(log: string, entries: readonly Entry[], most?: number): Promise<Receipt>;
  /** Entries after a place, in order, `most` at a time. A log that was never started is empty. */
  read(log: string, after: number, most: number): Promise<KeptEntry[]>;
  /** Number of entries of a log. */
  length(log: string): Promise<number>;
  /** The logs of a kind, oldest first, after the one named. */
  logs(kind: string, after: string, most: number): Promise<LogListed[]>;
  /** Takes a log away with all its entries and links. */
  erase(log: string): Promise<void>;

  /** Lets whoever holds the key with this hash open a log in a role. */
  addLink(link: Link): Promise<void>;
  /** The link of a key, also when it was revoked; undefined for a key that never was. */
  link(hash: string): Promise<Link | undefined>;
  /** All links of a log, oldest first. */
  links(log: string): Promise<Link[]>;
  /** Closes a link for good. False when the log has no such link. */
  revoke(log: string, id: string, at: string): Promise<boolean>;

  /** Hands over all that is kept, at one moment, part by part. */
  dump(take: (part: Part) => Promise<void>): Promise<void>;
  /** Puts back what a dump handed over, all of it or none. Rejects when there is something here already, unless that is to go. */
  fill(parts: AsyncIterable<Part>, replace: boolean): Promise<void>;

  close(): Promise<void>;
}

export interface Entry {
  /** Names the entry within its log; whoever makes it sees to it that it is unlike all others. */
  readonly id: string;
  readonly body: unknown;
  /** When the server took it, ISO 8601. */
  readonly at: string;
}

export interface KeptEntry extends Entry {
  /** 1 for the first of its log, and no number is left out. */
  readonly place: number;
}

export interface Receipt {
  /** Entries the log holds now. */
  readonly length: number;
  /** How many of those sent were new. */
  readonly added: number;
  /** Ids of those that are there already with another body: what was there stands. */
  readonly differing: readonly string[];
  /** The log would have had too many: nothing was added. */
  readonly full?: true;
}

export interface LogListed {
  readonly log: string;
  readonly length: number;
  readonly startedAt: string;
}

export interface Link {
  /** Hash of the key that opens it; the key itself is kept nowhere. */
  readonly hash: string;
  /** What the link is called where it is listed. */
  readonly id: string;
  readonly log: string;
  readonly role: string;
  readonly madeAt: string;
  readonly revokedAt?: string;
}

/** One line of a backup. */
export type Part =
  | { readonly log: string; readonly startedAt: string }
  | ({ readonly in: string } & KeptEntry)
  | { readonly link: Link };
