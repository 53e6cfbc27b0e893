import type { Done, Refused } from '../../ask/book/acting.ts';
import { actOn, workedOut } from '../../ask/book/at-hand.ts';
import { fold } from '../../ask/book/book.ts';
import { type Change, isStamp } from '../../ask/book/change.ts';
import type { JobPage } from '../../ask/views/book/forms.tsx';
import { dress } from '../dress.ts';
import { type OpenedJob, stampNow } from './job.ts';

/** All that the page of a job shows. */
export function propsOf(
  address: string,
  { role }: OpenedJob,
  changes: readonly Change[],
  version: string,
  more: Partial<JobPage> = {},
): JobPage {
  const { book, sheet, totals, fault } = workedOut(changes);
  return {
    address,
    role,
    book,
    changes,
    sheet,
    totals,
    said: fault ? [fault] : [],
    version,
    dress,
    once: () => stampNow(book),
    ...more,
  };
}

/**
 * Does what a form asks for. `once` is the stamp the form came with: the same form sent twice makes the same changes twice,
 * worked from the book without those it has made already.
 */
export function acted(
  fields: FormData,
  { role }: OpenedJob,
  changes: readonly Change[],
  fresh: boolean,
): Done | Refused {
  const text = (name: string): string => {
    const value = fields.get(name);
    return typeof value === 'string' ? value : '';
  };
  const count = Number(text('count'));
  const seen = Number.isSafeInteger(count) && count >= 0 ? changes.slice(0, count) : changes;
  const once = text('once');
  const given = !fresh && isStamp(once) && !onNewest.has(text('do'));
  const before = given ? changes.filter(({ id }) => !id.startsWith(once)) : changes;
  const now = fold(changes);
  let made = 0;
  return actOn(text, {
    role,
    changes: before,
    seen,
    day: dayHere,
    // The first is the form's own; those that follow sort behind it, and no other form has them.
    stamp: () => (given ? `${once}${made++ === 0 ? '' : made.toString(36).padStart(4, '0')}` : stampNow(now)),
  });
}

/** The day so many days back, by the clock of the server. */
function dayHere(back: number): string {
  const date = new Date();
  date.setDate(date.getDate() - back);
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** What is done to the book as it is now, and so must be stamped after all that is in it. */
const onNewest = new Set(['undo', 'settle', 'done', 'open', 'remove']);
