import type { Records } from '../../src/rules/knowledge.ts';

type Kind = keyof Records;
const kinds: readonly Kind[] = ['quantities', 'choices', 'relations', 'limits', 'practices', 'tables'];
/** Fields that hold cue lines or head words: each copy is asked for in words of its own, as a new field of work would be. */
const worded = new Set(['cues', 'spokenOf', 'after', 'before', 'setting', 'shareOf']);

/** The records as they are and, beside them, so many copies of all: each joined to the others of its own copy. */
export function grown(records: Records, copies: number): Records {
  const sets = [records, ...Array.from({ length: copies }, (_, at) => copied(records, `-copy${at + 1}`))];
  return Object.fromEntries(
    kinds.map((kind) => [kind, sets.flatMap((set) => set[kind] as readonly unknown[])]),
  ) as never;
}

function copied(records: Records, mark: string): Records {
  const originals = new Set<unknown>(kinds.flatMap((kind) => records[kind] as readonly unknown[]));
  const ids = new Set(kinds.flatMap((kind) => records[kind].map(({ id }) => id)));
  const made = new Map<object, unknown>();
  const copy = (value: unknown, field: string): unknown => {
    if (typeof value === 'string')
      return worded.has(field) ? marked(value, mark) : field === 'beside' && ids.has(value) ? value + mark : value;
    if (Array.isArray(value)) return value.map((each) => copy(each, field));
    if (typeof value !== 'object' || value === null) return value;
    const before = made.get(value);
    if (before) return before;
    const fields = Object.entries(value).map(([name, each]) => [name, copy(each, name)] as const);
    const named = originals.has(value) || (value as { op?: unknown }).op === 'fact';
    const whole = Object.fromEntries(fields);
    const fresh = named
      ? { ...whole, id: `${whole.id}${mark}`, ...('title' in whole ? { title: `${whole.title}${mark}` } : {}) }
      : whole;
    made.set(value, fresh);
    return fresh;
  };
  return Object.fromEntries(kinds.map((kind) => [kind, records[kind].map((record) => copy(record, kind))])) as never;
}

/** Each word of a line with the mark of its copy; signs for figures and forms stay. */
const marked = (line: string, mark: string): string =>
  line.replace(/(?<![#@a-z-])[a-z][a-z-]*/g, (word) => word + mark);
