import type { Cell, Change } from './change.ts';

/** A job book as its changes make it. */
export interface Book {
  readonly lines: ReadonlyMap<string, Line>;
  /** What two people set without having seen each other's, for both to look at. */
  readonly clashes: readonly Clash[];
  /** The latest stamp in it; a change made now must come after. */
  readonly last: string | undefined;
}

export interface Line {
  readonly id: string;
  readonly kind: string;
  readonly fields: ReadonlyMap<string, Held>;
  /** Taken off the job. It stays in the book. */
  readonly gone: boolean;
}

/** What a field holds: of several writings that nobody has seen together, the latest stands and the others are kept. */
export interface Held extends Writing {
  readonly others: readonly Writing[];
  /** Every change that nobody has written over: the next one takes the place of all of them. */
  readonly heads: readonly string[];
}

/** One writing of a field: the change it was made by. */
export interface Writing {
  readonly value: Cell | null;
  readonly change: string;
  readonly by?: string;
}

export interface Clash {
  readonly line: string;
  readonly field: string;
  readonly stands: Writing;
  readonly others: readonly Writing[];
}

/** The field by which a line is taken off the job. */
export const goneField = 'gone';

/** The set of changes of two copies of a book: each change once. Of two that bear one stamp the lesser text stands, on both sides alike. */
export function merge(a: readonly Change[], b: readonly Change[]): Change[] {
  const all = new Map<string, Change>();
  for (const change of [...a, ...b]) {
    const other = all.get(change.id);
    if (!other || JSON.stringify(change) < JSON.stringify(other)) all.set(change.id, change);
  }
  return [...all.values()].sort((x, y) => (x.id < y.id ? -1 : 1));
}

/** Works a book out from its changes. Their order does not matter, nor how often one comes. */
export function fold(changes: readonly Change[]): Book {
  const written = new Map<string, Map<string, Written[]>>();
  let last: string | undefined;
  for (const { id, by, line, set, over = {} } of merge(changes, [])) {
    if (last === undefined || id > last) last = id;
    let fields = written.get(line);
    if (!fields) {
      fields = new Map();
      written.set(line, fields);
    }
    for (const field of Object.keys(set)) {
      const seen = over[field] ?? noIds;
      const value = set[field] as Cell | null;
      const writing: Written =
        by === undefined ? { value, change: id, over: seen } : { value, change: id, over: seen, by };
      const writings = fields.get(field);
      if (writings) writings.push(writing);
      else fields.set(field, [writing]);
    }
  }
  const removals = new Map(changes.filter(({ set }) => set[goneField] === true).map((change) => [change.id, change]));
  const lines = new Map<string, Line>();
  const clashes: Clash[] = [];
  for (const [id, writings] of [...written].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const fields = new Map<string, Held>();
    for (const [field, all] of [...writings].sort(([a], [b]) => (a < b ? -1 : 1))) {
      const held = heldOf(all);
      fields.set(field, held);
      if (held.others.length > 0) clashes.push({ line: id, field, stands: held, others: held.others });
    }
    const gone = fields.get(goneField);
    const removal = gone?.value === true ? removals.get(gone.change) : undefined;
    const unseen = removal ? unseenBy(removal, fields) : undefined;
    // Somebody wrote in the line that another took off: it stays on until one of them settles it.
    if (gone && unseen) clashes.push({ line: id, field: goneField, stands: gone, others: [unseen] });
    lines.set(id, { id, kind: kindOf(id), fields, gone: removal !== undefined && !unseen });
  }
  return { lines, clashes, last };
}

/** The kind in a line's name. */
export const kindOf = (line: string): string => line.split('/', 1)[0]!;

function heldOf(all: readonly Written[]): Held {
  const [first] = all as [Written];
  if (all.length === 1) {
    // Most fields are written once; a book of hundreds of patches has thousands of them.
    const { value, change, by } = first;
    const heads = [change];
    return by === undefined ? { value, change, others: none, heads } : { value, change, by, others: none, heads };
  }
  const replaced = new Set<string>();
  for (const { change, over } of all) for (const each of over) if (each < change) replaced.add(each);
  const heads = all
    .filter(({ change }) => !replaced.has(change))
    .sort((a, b) => (a.change < b.change ? 1 : -1))
    .map(plain);
  const [stands, ...rest] = heads as [Writing, ...Writing[]];
  const same = JSON.stringify(stands.value);
  return {
    ...stands,
    others: rest.filter(({ value }) => JSON.stringify(value) !== same),
    heads: heads.map(({ change }) => change),
  };
}

type Written = Writing & { readonly over: readonly string[] };

const none: readonly Writing[] = [];

const noIds: readonly string[] = [];

const writingOf = (value: Cell | null, change: string, by: string | undefined): Writing =>
  by === undefined ? { value, change } : { value, change, by };

const plain = ({ value, change, by }: Written): Writing => writingOf(value, change, by);

/** A writing in a line that the one who took the line off had not seen. */
function unseenBy({ id, over = {} }: Change, fields: ReadonlyMap<string, Held>): Writing | undefined {
  for (const [field, held] of fields) {
    if (field === goneField) continue;
    for (const { value, change, by } of [held, ...held.others])
      if (value !== null && change !== id && !over[field]?.includes(change))
        return { value, change, ...(by === undefined ? {} : { by }) };
  }
  return undefined;
}

/** Who makes a change, and when. */
export interface Maker {
  readonly stamp: string;
  readonly by?: string | undefined;
}

/** A change that sets fields of a line, in the place of what the book holds there now. */
export function setting(book: Book, line: string, set: Change['set'], { stamp, by }: Maker): Change {
  const fields = book.lines.get(line)?.fields;
  const over: Record<string, string[]> = {};
  for (const field of Object.keys(set)) {
    const heads = fields?.get(field)?.heads;
    if (heads) over[field] = [...heads];
  }
  return { id: stamp, ...(by ? { by } : {}), line, set, ...(Object.keys(over).length > 0 ? { over } : {}) };
}

/** A change that takes a line off the job, with all that stands in it now. */
export function removing(book: Book, line: string, { stamp, by }: Maker): Change {
  const over: Record<string, string[]> = {};
  for (const [field, held] of book.lines.get(line)?.fields ?? []) over[field] = [...held.heads];
  return { id: stamp, ...(by ? { by } : {}), line, set: { [goneField]: true }, over };
}

/**
 * The change that takes another one back: each field it set holds again what it held before, and a line that it began is
 * off again. Fields that somebody has written since are left alone; undefined when that is all of them.
 */
export function undoing(changes: readonly Change[], id: string, maker: Maker): Change | undefined {
  const undone = changes.find((change) => change.id === id);
  if (!undone) return undefined;
  const book = fold(changes);
  const before = fold(changes.filter((change) => change.id !== id)).lines.get(undone.line);
  const now = book.lines.get(undone.line)!;
  // It began the line, and nobody has written in it since: the line goes with it.
  const began = before === undefined && [...now.fields.values()].every(({ change }) => change === id);
  if (began && undone.line !== 'job') return removing(book, undone.line, maker);
  const set: Record<string, Cell | null> = {};
  for (const field of Object.keys(undone.set)) {
    if (now.fields.get(field)?.change !== id) continue;
    set[field] =
      field === goneField ? (before?.fields.get(field)?.value ?? false) : (before?.fields.get(field)?.value ?? null);
  }
  return Object.keys(set).length === 0 ? undefined : setting(book, undone.line, set, maker);
}

/** The changes that take several back, the last of them first; those that were changed again since are left out. */
export function undoingAll(changes: readonly Change[], ids: readonly string[], maker: () => Maker): Change[] {
  const made: Change[] = [];
  for (const id of [...ids].reverse()) {
    const change = undoing([...changes, ...made], id, maker());
    if (change) made.push(change);
  }
  return made;
}
