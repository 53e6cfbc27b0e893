import { act as words } from '../wording/book-act.en.ts';
import type { Actor, Done, Refused } from './acting.ts';
import { setting } from './book.ts';
import type { Change } from './change.ts';
import { readList } from './list-in.ts';
import { nextLabel, sheetOf, systemOfSheet } from './sheet.ts';
import { isWholeCsv, readWholeCsv } from './whole-csv.ts';
import { isWholeJson, readWholeJson } from './whole-json.ts';

/** Takes in what was pasted: a saved book, a whole book as CSV, or a list of patches. */
export function importing(text: string, actor: Actor): Done | Refused {
  const { engine, now, stamp, by } = actor;
  if (isWholeJson(text)) {
    const changes = readWholeJson(text, engine.knowledge);
    if (typeof changes === 'string') return { fault: changes };
    const known = new Set(actor.changes.map(({ id }) => id));
    const fresh = changes.filter(({ id }) => !known.has(id));
    return { changes: fresh, said: [words.joined(fresh.length)] };
  }
  if (isWholeCsv(text)) {
    const lines = readWholeCsv(text, engine.knowledge);
    if (typeof lines === 'string') return { fault: lines };
    const changes = lines.flatMap(({ line, set }): Change[] => {
      const had = now.lines.get(line)?.fields;
      const other = Object.entries(set).filter(
        ([name, value]) => JSON.stringify(had?.get(name)?.value) !== JSON.stringify(value),
      );
      return other.length > 0 ? [setting(now, line, Object.fromEntries(other), { stamp: stamp(), by })] : [];
    });
    return { changes, said: [words.joined(changes.length)] };
  }
  const sheet = sheetOf(now, engine.knowledge);
  const list = readList(text, engine, systemOfSheet(sheet));
  if (typeof list === 'string') return { fault: list };
  let next = Number(nextLabel(sheet));
  const changes = list.patches.map((set) => {
    const at = stamp();
    const label = set.label ?? String(next++);
    return setting(now, `patch/${at.replaceAll('.', '-')}`, { ...set, label }, { stamp: at, by });
  });
  return {
    changes,
    said: [
      words.taken(list.patches.length),
      ...list.notes,
      ...(list.faults.length > 0 ? [words.heldBack(list.faults.length)] : []),
      ...list.faults.map(({ row, text: fault }) => words.row(row, fault)),
    ],
    ...(list.rejected ? { draft: list.rejected } : {}),
  };
}
