import { namedUnits } from '../../calc/read/named-units.ts';
import { read } from '../../calc/read/read.ts';
import { type Unit, unitRow } from '../../calc/units.ts';
import type { Engine } from '../engine.ts';
import { csv as words } from '../wording/book-csv.en.ts';

/** What a column of a pasted list is for. */
export type Column =
  | { readonly to: 'field'; readonly field: string }
  | { readonly to: 'size' }
  | { readonly to: 'figure'; readonly quantity: string; readonly unit?: Unit }
  /** Kept in the note of the patch, under its heading. */
  | { readonly to: 'note'; readonly heading: string };

/** Reads a heading: `Length (ft)`, `WIDTH'`, `Depth, in.`, `Sta.`, `Remarks`. */
export function readHeading(heading: string, engine: Engine): Column {
  const { unit, name } = withoutUnit(heading.trim());
  const key = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  if (key === '') return { to: 'note', heading: heading.trim() || words.unnamed };
  const field = fieldNamed.get(key);
  if (field === 'size') return { to: 'size' };
  if (field) return { to: 'field', field };
  const quantity = quantityNamed(key, engine);
  if (!quantity) return { to: 'note', heading: heading.trim() };
  const fits = unit && unitRow(unit).dimension === engine.knowledge.quantities.get(quantity)!.dimension;
  return { to: 'figure', quantity, ...(fits ? { unit } : {}) };
}

const fieldNamed = new Map<string, string>(
  Object.entries(words.headings).flatMap(([field, names]) => names.map((name) => [name, field] as const)),
);

/** Longest heading that a unit is looked for in. */
const longestHeading = 100;

/** The unit in a heading, in brackets or after its name, and the heading without it. */
function withoutUnit(heading: string): { unit?: Unit; name: string } {
  if (heading.length > longestHeading) return { name: heading };
  const bracketed = /^(.{1,60})[([{]([^()[\]{}]{1,24})[)\]}]\s*$/u.exec(heading);
  const trailing = /^(.{1,60}?)(?:[\s,_:/-]+)([\p{L}"'”’.²]{1,12})$/u.exec(heading);
  const glued = /^(.{1,60}?)(["'”’]{1,2})$/u.exec(heading);
  for (const match of [bracketed, glued, trailing]) {
    const unit = match && unitOf(match[2]!.trim());
    if (unit) return { unit, name: match[1]! };
  }
  return { name: heading };
}

function unitOf(text: string): Unit | undefined {
  const [figure, ...others] = read(`5 ${text.replace(/\.$/, '')}`);
  if (figure?.kind === 'figure' && others.length === 0 && figure.unit) return figure.unit;
  const [glued, ...rest] = read(`5${text}`);
  if (glued?.kind === 'figure' && rest.length === 0 && glued.unit) return glued.unit;
  return namedUnits(read(text))[0]?.unit;
}

/** The quantity a heading is the title of, or whose word it holds: those of the patch itself go before all others. */
function quantityNamed(key: string, { vocabulary, byWord, titles, knowledge }: Engine): string | undefined {
  const plain = key.replaceAll(' ', '-');
  if (knowledge.quantities.has(plain)) return plain;
  const heads = key.split(' ').map(vocabulary.head);
  for (const { words: title, record } of titles().get(heads.at(-1)!) ?? [])
    if (title.length === heads.length && title.every((word, i) => word === heads[i])) return record.id;
  const known = words.figures as Readonly<Record<string, string>>;
  for (const word of [...key.split(' '), ...heads]) if (Object.hasOwn(known, word)) return known[word];
  for (const head of heads) {
    const patch = byWord.get(head)?.find(({ plain }) => plain);
    if (patch) return patch.id;
  }
  return undefined;
}
