import { fromBase, toBase } from '../../calc/quantity.ts';
import type { JobFact, TalkBook, TalkPatch } from '../reply.ts';
import { tidy } from '../say.ts';
import { type Book, removing, setting } from './book.ts';
import type { Cell, Change, Figure } from './change.ts';
import { newLine } from './fields.ts';
import type { Entry, Sheet } from './sheet.ts';
import { cells } from './talk-changes.ts';

/** A job book, and the patches of it before and after something was said. */
interface Booking {
  readonly sheet: Sheet;
  readonly now: Book;
  readonly seen: Book;
  readonly before: TalkBook;
  readonly next: TalkBook;
  readonly stamp: () => string;
  readonly by?: string | undefined;
  readonly day?: string | undefined;
}

/** What came between two states of a talk's patches, as changes of the job book: tons that went down are a load of their own. */
export function booked({ sheet, now, seen, before, next, stamp, by, day }: Booking): Change[] {
  if (next === before) return [];
  const lines = new Map(sheet.patches.map(({ label, line }) => [label, line]));
  const had = new Map(before.patches.map((patch) => [patch.label, patch]));
  const kept = new Set(next.patches.map(({ label }) => label));
  const changes: Change[] = [];
  const put = (book: Book, line: string, set: Record<string, Cell>, id = stamp()): void => {
    if (Object.keys(set).length > 0) changes.push(setting(book, line, set, { stamp: id, by }));
  };
  const inBook = (line: string): Book => (seen.lines.has(line) ? seen : now);
  for (const patch of next.patches) {
    const old = had.get(patch.label);
    if (patch === old) continue;
    const line = lines.get(patch.label);
    if (!old || line === undefined) {
      const id = stamp();
      put(now, newLine('patch', id), { label: patch.label, ...cells(patch.facts) }, id);
      continue;
    }
    const set = { ...cells(otherFacts(old, patch)), ...(patch.done && !old.done ? { done: true } : {}) };
    if (Object.keys(set).length > 0) put(inBook(line), line, set);
    const load = loadOf(old, patch);
    if (!load) continue;
    const id = stamp();
    put(now, newLine('load', id), { ...(day ? { day } : {}), patch: line, ...load }, id);
  }
  for (const { label } of before.patches) {
    const line = lines.get(label);
    if (!kept.has(label) && line !== undefined) changes.push(removing(inBook(line), line, { stamp: stamp(), by }));
  }
  return changes;
}

function otherFacts(before: TalkPatch, after: TalkPatch): JobFact[] {
  const had = new Map(before.facts.map((fact) => [fact.quantity, fact]));
  return after.facts.filter((fact) => {
    const old = had.get(fact.quantity);
    if (!old) return true;
    if ('unit' in fact) return !('unit' in old) || old.number !== fact.number || old.unit !== fact.unit;
    return 'unit' in old || old.choice !== fact.choice;
  });
}

/** The tons that came on top, and how far the mix reaches now. */
function loadOf(before: TalkPatch, after: TalkPatch): Record<string, Figure> | undefined {
  const base = (figure: Figure | undefined): number => (figure ? toBase(figure.number, figure.unit) : 0);
  const more = base(after.laid) - base(before.laid);
  if (!after.laid || more <= 0) return undefined;
  const reach = base(after.laidTo) > base(before.laidTo) ? after.laidTo : undefined;
  return {
    'placed-mass': { number: tidy(fromBase(more, after.laid.unit)), unit: after.laid.unit },
    ...(reach ? { 'placed-length': reach } : {}),
  };
}

/** What is down on each patch, and how far, over all its loads; in the unit of the first of them. */
export function laidOn(loads: readonly Entry[]): Map<string, Pick<TalkPatch, 'laid' | 'laidTo'>> {
  const all = new Map<string, { laid?: Figure; laidTo?: Figure }>();
  for (const load of loads) {
    const patch = load.text('patch');
    if (patch === undefined) continue;
    const entry = all.get(patch) ?? {};
    all.set(patch, entry);
    const [mass, length] = [load.figure('placed-mass'), load.figure('placed-length')];
    if (mass) {
      const unit = entry.laid?.unit ?? mass.unit;
      const sum = (entry.laid ? toBase(entry.laid.number, unit) : 0) + toBase(mass.number, mass.unit);
      entry.laid = { number: tidy(fromBase(sum, unit)), unit };
    }
    if (
      length &&
      (!entry.laidTo || toBase(length.number, length.unit) > toBase(entry.laidTo.number, entry.laidTo.unit))
    )
      entry.laidTo = length;
  }
  return all;
}
