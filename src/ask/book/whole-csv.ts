import Papa from 'papaparse';
import { isUnit } from '../../calc/units.ts';
import { jsonIn } from '../../rules/json.ts';
import type { Knowledge } from '../../rules/knowledge.ts';
import { book as bookWords } from '../wording/book.en.ts';
import { csv as words } from '../wording/book-csv.en.ts';
import { type Book, goneField, kindOf } from './book.ts';
import type { Cell, Figure } from './change.ts';
import { type FieldType, fieldsOf, fieldType, isLineKind, lineKinds } from './fields.ts';
import { mostRows } from './list-in.ts';
import { readCell } from './read-change.ts';

/** Heading of the first column of a whole book as CSV; by it one of ours is known. */
const first = 'record';

/**
 * A whole book as CSV, a line a row: `record` names the line, every other column is a field by its name. Reading it back
 * gives the same fields. Text that a spreadsheet would work out gets a mark before it, and loses it when it is read.
 */
export function bookToCsv(book: Book, knowledge: Knowledge): string {
  const lines = [...book.lines.values()]
    .filter(({ gone, kind }) => !gone && isLineKind(kind))
    .sort((a, b) => lineKinds.indexOf(a.kind as never) - lineKinds.indexOf(b.kind as never) || (a.id < b.id ? -1 : 1));
  const used = new Set(
    lines.flatMap(({ fields }) =>
      [...fields].flatMap(([name, { value }]) => (value === null || name === goneField ? [] : [name])),
    ),
  );
  const known = new Set(lineKinds.flatMap((kind) => fieldsOf(kind)));
  const columns = [
    ...[...known].filter((name) => used.has(name)),
    ...[...used].filter((name) => !known.has(name)).sort(),
  ];
  const rows = lines.map(({ id, kind, fields }) => [
    id,
    ...columns.map((name) => {
      const value = fields.get(name)?.value ?? null;
      const type = isLineKind(kind) ? fieldType(kind, name, knowledge) : undefined;
      return value === null ? '' : cellText(value, type);
    }),
  ]);
  return `${Papa.unparse([[first, ...columns], ...rows], { newline: '\r\n' })}\r\n`;
}

/** True for a text that `bookToCsv` wrote. */
export const isWholeCsv = (text: string): boolean => /^\uFEFF?"?record"?[,;\t\r\n]/.test(text);

/** What a whole CSV says, line by line; a text for one that is damaged or from a newer version: then nothing of it is taken. */
export function readWholeCsv(
  text: string,
  knowledge: Knowledge,
): { line: string; set: Record<string, Cell> }[] | string {
  const { data, errors } = Papa.parse<string[]>(text, { skipEmptyLines: true, preview: 20 * mostRows });
  const [head = [], ...rows] = data;
  if (data.length >= 20 * mostRows) return words.tooMany(20 * mostRows);
  if (errors.some(({ type }) => type === 'Quotes')) return words.quotes;
  const lines: { line: string; set: Record<string, Cell> }[] = [];
  for (const [line = '', ...cells] of rows) {
    const kind = kindOf(line);
    if (!isLineKind(kind) || !/^(job|[a-z]{1,12}\/[A-Za-z0-9_-]{1,40})$/.test(line))
      return bookWords.wrong.newer(line.slice(0, 60));
    const set: Record<string, Cell> = {};
    for (const [i, cell] of cells.entries()) {
      if (cell === '') continue;
      const field = head[i + 1]?.trim() ?? '';
      const type = fieldType(kind, field, knowledge);
      if (!type) return bookWords.wrong.newer(`${line} ${field}`.slice(0, 80));
      const value = readText(cell, type);
      if (value === undefined) return words.unknownCell(`${line} ${field}`, cell.slice(0, 60));
      set[field] = value;
    }
    lines.push({ line, set });
  }
  return lines;
}

const mark = "'";
const needsMark = /^[=+\-@\t\r']/;

function cellText(value: Cell, type: FieldType | undefined): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return needsMark.test(value) && type?.type === 'text' ? mark + value : value;
  if (Array.isArray(value)) return value.map(figureText).join('; ');
  return 'unit' in value ? figureText(value) : JSON.stringify(value);
}

const figureText = ({ number, unit }: Figure): string => `${number} ${unit}`;

function readText(cell: string, type: FieldType): Cell | undefined {
  switch (type.type) {
    case 'figure':
      return readCell(figureIn(cell), type);
    case 'figures':
      return readCell(cell.split(';').map(figureIn), type);
    case 'yes':
      return cell === 'yes' ? true : cell === 'no' ? false : undefined;
    case 'rules':
      return readCell(jsonIn(cell)?.json, type);
    case 'text':
      return readCell(cell.startsWith(mark) ? cell.slice(1) : cell, type);
    default:
      return readCell(cell, type);
  }
}

function figureIn(text: string): Figure | undefined {
  const [number = '', unit = '', ...rest] = text.trim().split(' ');
  return rest.length === 0 && isUnit(unit) && number !== '' ? { number: Number(number), unit } : undefined;
}
