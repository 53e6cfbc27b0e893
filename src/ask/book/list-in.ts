import Papa from 'papaparse';
import type { Engine } from '../engine.ts';
import type { UnitSystem } from '../reply.ts';
import { csv as words } from '../wording/book-csv.en.ts';
import { isFormula, type ListStyle, readListCell } from './cells.ts';
import type { Cell } from './change.ts';
import { type Column, readHeading } from './columns.ts';

/** Most rows of a list, and characters. */
export const mostRows = 2000;
const mostCharacters = 4e6;

/** A list of patches as it was read: rows that are sound, what is wrong with the others, and what was taken for granted. */
export interface ListRead {
  readonly patches: readonly Readonly<Record<string, Cell>>[];
  readonly faults: readonly { readonly row: number; readonly text: string }[];
  readonly notes: readonly string[];
  /** The rows with faults under their headings, as text, to be mended and sent again. */
  readonly rejected: string;
}

/**
 * Reads a patrol list that was pasted or saved from a spreadsheet: any separator, headings in any order with or without
 * units, units in the cells, decimal commas. Columns that are not known are kept in the notes, so nothing is lost. A text
 * says why a list cannot be taken at all.
 */
export function readList(text: string, engine: Engine, system: UnitSystem = 'us'): ListRead | string {
  if (text.trim() === '') return words.empty;
  if (text.length > mostCharacters) return words.tooLong(mostCharacters);
  const parsed = Papa.parse<string[]>(text, {
    preview: mostRows + 2,
    skipEmptyLines: 'greedy',
    delimitersToGuess: [',', '\t', ';', '|'],
  });
  const [headings, ...rows] = parsed.data;
  if (!headings) return words.empty;
  if (rows.length > mostRows) return words.tooMany(mostRows);
  const columns = headings.map((heading) => readHeading(heading, engine));
  if (columns.every(({ to }) => to === 'note')) return words.noColumns;
  const style = styleOf(rows, columns, parsed.meta.delimiter, system);
  const broken = new Set(
    parsed.errors.flatMap(({ type, row }) => (type === 'Quotes' && row !== undefined ? [row - 1] : [])),
  );
  const patches: Record<string, Cell>[] = [];
  const faults: { row: number; text: string }[] = [];
  const rejected: string[][] = [];
  rows.forEach((cells, at) => {
    const row = readRow(cells, headings, columns, style, engine);
    const wrong = broken.has(at) ? [words.quotes] : row.faults;
    if (wrong.length > 0) {
      rejected.push(cells);
      for (const fault of wrong) faults.push({ row: at + 2, text: fault });
    } else if (Object.keys(row.set).length > 0) patches.push(row.set);
  });
  return {
    patches,
    faults,
    notes: notesOn(headings, columns, rows, style, engine),
    rejected:
      rejected.length > 0
        ? Papa.unparse([headings, ...rejected], { delimiter: parsed.meta.delimiter, newline: '\n' })
        : '',
  };
}

function readRow(
  cells: readonly string[],
  headings: readonly string[],
  columns: readonly Column[],
  style: ListStyle,
  engine: Engine,
): { set: Record<string, Cell>; faults: string[] } {
  const set: Record<string, Cell> = {};
  const faults: string[] = [];
  const notes: string[] = [];
  cells.forEach((raw, i) => {
    const cell = raw.trim();
    if (cell === '' || (columns[i]?.to === 'figure' && /^(-|–|n\/?a|\?)$/i.test(cell))) return;
    const column = columns[i] ?? { to: 'note', heading: words.unnamed };
    const heading = headings[i]?.trim() || words.unnamed;
    if (column.to === 'note') {
      notes.push(words.noteLine(column.heading, cell));
      return;
    }
    const read = readListCell(cell, heading, column, style, engine);
    if ('fault' in read && typeof read.fault === 'string') faults.push(read.fault);
    else
      for (const [field, value] of Object.entries(read as Record<string, Cell>))
        if (field === 'note') notes.push(value as string);
        else set[field] ??= value;
  });
  const note = notes.join('\n');
  if (note.length > 1000) faults.push(words.long(words.unnamed, 1000));
  else if (note !== '') set.note = note;
  return { set, faults };
}

/** A comma is a decimal one when some figure has one with other than three digits after it, and none has a point that way. */
function styleOf(
  rows: readonly string[][],
  columns: readonly Column[],
  delimiter: string,
  system: UnitSystem,
): ListStyle {
  let [commas, points] = [0, 0];
  for (const cells of rows)
    columns.forEach(({ to }, i) => {
      if (to !== 'figure' && to !== 'size') return;
      const cell = cells[i] ?? '';
      if (/\d,(\d{1,2}|\d{4,9})(?!\d)/.test(cell) && !/,\s/.test(cell)) commas++;
      if (/\d\.(\d{1,2}|\d{4,9})(?!\d)/.test(cell)) points++;
    });
  return { decimalComma: commas > 0 && (points === 0 || delimiter === ';'), system };
}

/** What was taken for granted in reading the list. */
function notesOn(
  headings: readonly string[],
  columns: readonly Column[],
  rows: readonly string[][],
  { decimalComma, system }: ListStyle,
  { knowledge }: Engine,
): string[] {
  const notes: string[] = decimalComma ? [words.decimalComma] : [];
  columns.forEach((column, i) => {
    if (column.to !== 'figure' || column.unit) return;
    if (
      !rows.some(
        (cells) => /^[\s\d.,/½¼¾-]+$/.test(cells[i] ?? '') && !isFormula(cells[i]!.trim()) && /\d/.test(cells[i]!),
      )
    )
      return;
    notes.push(words.assumedUnit(headings[i]!.trim(), knowledge.quantities.get(column.quantity)!.units[system]));
  });
  columns.forEach((column, i) => {
    if (
      column.to === 'field' &&
      column.field === 'day' &&
      rows.some((cells) => /^\d{1,2}\/\d{1,2}\/\d{4}$/.test((cells[i] ?? '').trim()))
    )
      notes.push(words.americanDates);
  });
  const kept = columns.flatMap((column, i) =>
    column.to === 'note' && rows.some((cells) => (cells[i] ?? '').trim() !== '') ? [column.heading] : [],
  );
  return kept.length > 0 ? [...notes, words.keptInNote(kept)] : notes;
}
