import { engine } from '../engine.ts';
import { act } from './act.ts';
import type { Done, Field, Refused } from './acting.ts';
import { fold } from './book.ts';
import type { Change } from './change.ts';
import { engineFor, FileFault } from './reckon.ts';
import type { Role } from './roles.ts';
import { sheetOf } from './sheet.ts';
import { totalsOf } from './totals.ts';

/** A book with all that is worked out from it, by the agency's rules where it has some. */
export function workedOut(changes: readonly Change[]) {
  const book = fold(changes);
  const sheet = sheetOf(book, engine.knowledge);
  const own = engineFor(engine, sheet.rules);
  const ruled = own instanceof FileFault ? engine : own;
  return { book, sheet, totals: totalsOf(ruled, sheet), fault: own instanceof FileFault ? own.message : undefined };
}

/** A book as somebody has it before them, with a form of it filled in. */
export interface AtHand {
  readonly role: Role;
  readonly changes: readonly Change[];
  /** The changes that the page with the form was made from. */
  readonly seen: readonly Change[];
  readonly stamp: () => string;
  readonly day: (back: number) => string;
}

/** Does what a form of the job page asks for; the same on the server and on the phone. */
export function actOn(field: Field, { role, changes, seen, stamp, day }: AtHand): Done | Refused {
  const now = fold(changes);
  const text: Field = (name) => field(name).replaceAll('\r\n', '\n');
  const initials = text('initials') || text('by');
  return act(text, {
    engine,
    role,
    changes,
    seen: seen.length === changes.length ? now : fold(seen),
    now,
    by: /^\p{L}{1,4}$/u.test(initials) ? initials : undefined,
    stamp,
    day,
  });
}
