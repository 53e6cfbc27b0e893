import { engine } from '../engine.ts';
import { act } from './act.ts';
import type { Done, Field, Refused } from './acting.ts';
import { type Book, fold } from './book.ts';
import type { Change } from './change.ts';
import { talkChanges } from './talk-changes.ts';

/** The changes that a new job begins with: its name and road, a list that was pasted, what a talk knows. */
export function begin(field: Field, stampAfter: (book: Pick<Book, 'last'>) => string): Done | Refused {
  const changes: Change[] = [];
  const said: string[] = [];
  let draft: string | undefined;
  for (const [what, names] of [
    ['job', ['name', 'road']],
    ['import', ['text']],
  ] as const) {
    if (names.every((name) => field(name).trim() === '')) continue;
    const book = fold(changes);
    const done = act(
      (name) => (name === 'do' ? what : (names as readonly string[]).includes(name) ? field(name) : ''),
      {
        engine,
        role: 'edit',
        changes,
        seen: book,
        now: book,
        stamp: () => stampAfter(book),
      },
    );
    if ('fault' in done) return done;
    changes.push(...done.changes);
    said.push(...done.said);
    draft ??= done.draft;
  }
  changes.push(...talkChanges(field('talk'), () => stampAfter(fold(changes))));
  return { changes, said, ...(draft === undefined ? {} : { draft }) };
}
