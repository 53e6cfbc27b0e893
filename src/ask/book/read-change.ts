import { toBase } from '../../calc/quantity.ts';
import { isUnit, unitRow } from '../../calc/units.ts';
import { isNestedDeep } from '../../rules/json.ts';
import type { Knowledge } from '../../rules/knowledge.ts';
import { book as words } from '../wording/book.en.ts';
import { kindOf } from './book.ts';
import { type Cell, type Change, type Figure, isStamp } from './change.ts';
import { type FieldType, fieldType, isLineKind } from './fields.ts';

/** Most fields that one change sets. */
const mostFields = 60;
const mostReadings = 100;

/** Reads a change that came from outside. A text says what is wrong with it, where it is one that cannot be taken. */
export function readChange(sent: unknown, knowledge: Knowledge): Change | string {
  if (!isObject(sent)) return words.wrong.change;
  const { id, by, line, set, over } = sent;
  if (!isStamp(id)) return words.wrong.stamp;
  if (by !== undefined && !isInitials(by)) return words.wrong.initials;
  if (typeof line !== 'string' || !/^(job|[a-z]{1,12}\/[A-Za-z0-9_-]{1,40})$/.test(line)) return words.wrong.line;
  const kind = kindOf(line);
  if (!isLineKind(kind) || (kind === 'job') !== (line === 'job')) return words.wrong.newer(line);
  if (!isObject(set) || Object.keys(set).length === 0 || Object.keys(set).length > mostFields)
    return words.wrong.change;
  const cells: Record<string, Cell | null> = {};
  for (const [field, value] of Object.entries(set)) {
    const type = fieldType(kind, field, knowledge);
    if (!type) return words.wrong.newer(`${line} ${field}`.slice(0, 80));
    const cell = value === null ? null : readCell(value, type);
    if (cell === undefined) return words.wrong.cell(field);
    cells[field] = cell;
  }
  const seen = readOver(over, cells);
  if (!seen) return words.wrong.change;
  return {
    id,
    ...(by === undefined ? {} : { by: by as string }),
    line,
    set: cells,
    ...(Object.keys(seen).length > 0 ? { over: seen } : {}),
  };
}

/** A removal names what it saw in fields that it does not set, so any field may stand in it. */
function readOver(over: unknown, cells: Readonly<Record<string, unknown>>): Record<string, string[]> | undefined {
  if (over === undefined) return {};
  if (!isObject(over) || Object.keys(over).length > mostFields + Object.keys(cells).length) return undefined;
  const seen: Record<string, string[]> = {};
  for (const [field, ids] of Object.entries(over)) {
    if (!/^[a-z-]{1,60}$/.test(field) || !Array.isArray(ids) || ids.length > 200 || !ids.every(isStamp))
      return undefined;
    seen[field] = ids;
  }
  return seen;
}

/** A value as a field of that type holds it; undefined when it is none. */
export function readCell(value: unknown, type: FieldType): Cell | undefined {
  switch (type.type) {
    case 'text':
      return typeof value === 'string' && value !== '' && value.length <= type.most ? value : undefined;
    case 'initials':
      return isInitials(value) ? value : undefined;
    case 'date':
      return isDate(value) ? value : undefined;
    case 'clock':
      return typeof value === 'string' && /^([01]\d|2[0-3]):[0-5]\d$/.test(value) ? value : undefined;
    case 'yes':
      return typeof value === 'boolean' ? value : undefined;
    case 'line':
      return typeof value === 'string' &&
        value.startsWith(`${type.kind}/`) &&
        /^[A-Za-z0-9_-]{1,40}$/.test(value.slice(type.kind.length + 1))
        ? value
        : undefined;
    case 'choice':
      return typeof value === 'string' && type.options.includes(value) ? value : undefined;
    case 'figure':
      return readFigure(value, type.dimension);
    case 'figures': {
      if (!Array.isArray(value) || value.length === 0 || value.length > mostReadings) return undefined;
      const figures = value.map((each) => readFigure(each, type.dimension));
      return figures.every((figure) => figure !== undefined) ? figures : undefined;
    }
    case 'rules':
      return isObject(value) && 'rules' in value && !isNestedDeep(value) && JSON.stringify(value).length <= type.most
        ? { rules: value.rules }
        : undefined;
  }
}

/** Beyond this no figure of a road job lies, in base units. */
const farBeyond = 1e12;

function readFigure(value: unknown, dimension: string): Figure | undefined {
  if (!isObject(value)) return undefined;
  const { number, unit } = value;
  if (typeof number !== 'number' || !Number.isFinite(number) || typeof unit !== 'string' || !isUnit(unit))
    return undefined;
  if (unitRow(unit).dimension !== dimension || Math.abs(toBase(number, unit)) > farBeyond) return undefined;
  return { number, unit };
}

const isObject = (x: unknown): x is Record<string, unknown> => typeof x === 'object' && x !== null && !Array.isArray(x);

/** Nobody's name is kept: two to four letters at most, or a single one. */
export const isInitials = (x: unknown): x is string => typeof x === 'string' && /^\p{L}{1,4}$/u.test(x);

/** A day that the calendar has. */
export function isDate(x: unknown): x is string {
  const match = typeof x === 'string' ? /^(\d{4})-(\d\d)-(\d\d)$/.exec(x) : null;
  if (!match) return false;
  const [year, month, day] = match.slice(1).map(Number) as [number, number, number];
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
  return day >= 1 && day <= days;
}
