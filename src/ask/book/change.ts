import type { Unit } from '../../calc/units.ts';

/** A figure as it was written down, in its own unit. */
export interface Figure {
  readonly number: number;
  readonly unit: Unit;
}

/** What one field of a line holds. */
export type Cell = string | boolean | Figure | readonly Figure[] | { readonly rules: unknown };

/**
 * One edit of a job book: some fields of one line. A book is nothing but the set of its changes, so two copies of it are
 * joined by putting their changes together, in any order and as often as one likes.
 */
export interface Change {
  /** When and on which phone it was made; no two changes have the same, and later ones sort after (see `stampAfter`). */
  readonly id: string;
  /** Initials of who made it, where they gave them. */
  readonly by?: string;
  /** `job`, or `kind/id`: patch/a1, load/b7. */
  readonly line: string;
  /** New contents by field; null empties a field. */
  readonly set: Readonly<Record<string, Cell | null>>;
  /** For each field set: the changes that its maker saw there, and which this one takes the place of. */
  readonly over?: Readonly<Record<string, readonly string[]>>;
}

/**
 * The stamp for a phone's next change: a hybrid logical clock (Kulkarni and others, 2014). It is after every stamp seen
 * so far, whatever the phone's own clock says, and carries the wall's time as long as that is ahead. Stamps sort as texts.
 */
export function stampAfter(seen: string | undefined, wall: number, device: string): string {
  const last = seen === undefined ? { time: -1, count: 0 } : partsOf(seen);
  const now = Math.max(0, Math.min(Math.floor(wall), mostTime));
  const [time, count] = now > last.time ? [now, 0] : [last.time, last.count + 1];
  return count > mostCount ? stamp(time + 1, 0, device) : stamp(time, count, device);
}

/** The time a stamp carries, in milliseconds since 1970. */
export const timeOf = (id: string): number => partsOf(id).time;

/** True for a text made by `stampAfter`. */
export const isStamp = (text: unknown): text is string =>
  typeof text === 'string' && /^[0-9a-z]{9}\.[0-9a-z]{4}\.[0-9a-z]{4,16}$/.test(text);

const stamp = (time: number, count: number, device: string): string =>
  `${time.toString(36).padStart(9, '0')}.${count.toString(36).padStart(4, '0')}.${device}`;

function partsOf(id: string): { time: number; count: number } {
  const [time = '0', count = '0'] = id.split('.');
  return { time: Number.parseInt(time, 36), count: Number.parseInt(count, 36) };
}

const mostTime = 36 ** 9 - 2;
const mostCount = 36 ** 4 - 1;
