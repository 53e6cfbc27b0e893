import { toBase } from '../../calc/quantity.ts';
import { read } from '../../calc/read/read.ts';
import type { Figure as FigureRead } from '../../calc/read/reading.ts';
import { type Unit, unitRow } from '../../calc/units.ts';
import { sayFigure } from '../../calc/wording.ts';
import type { QuantityRecord } from '../../rules/shapes.ts';
import type { Engine } from '../engine.ts';
import { emptyJob } from '../job.ts';
import type { UnitSystem } from '../reply.ts';
import { understand } from '../understand.ts';
import { csv as words } from '../wording/book-csv.en.ts';
import type { Cell, Figure } from './change.ts';
import type { Column } from './columns.ts';
import { isDate } from './read-change.ts';

/** How the cells of one list are written. */
export interface ListStyle {
  /** A comma in a figure is a decimal one. */
  readonly decimalComma: boolean;
  readonly system: UnitSystem;
}

/** What a cell comes to: fields of the patch, or what is wrong with it. */
export type CellRead = Readonly<Record<string, Cell>> | { readonly fault: string };

/** True for a cell a spreadsheet would work out. A figure below nothing is none, and a lone dash means "none". */
export const isFormula = (cell: string): boolean => /^[=@]|^[+-](?![\d.\s]|$)/.test(cell);

/** Reads one cell of a column. A formula is kept as the text it is where text may stand, and never worked out. */
export function readListCell(
  cell: string,
  heading: string,
  column: Column,
  style: ListStyle,
  engine: Engine,
): CellRead {
  if (column.to === 'figure') {
    const record = engine.knowledge.quantities.get(column.quantity)!;
    return readFigures(cell, heading, record, column.unit, style);
  }
  if (column.to === 'size') return readSize(cell, heading, style, engine);
  if (column.to === 'note') return {};
  return readField(cell, heading, column.field, style, engine);
}

function readField(cell: string, heading: string, field: string, style: ListStyle, engine: Engine): CellRead {
  if (field === 'day') {
    const day = dayIn(cell);
    return day ? { day } : { fault: words.date(heading, cell) };
  }
  if (field === 'done') {
    const said = cell.toLowerCase();
    if ((words.yes as readonly string[]).includes(said)) return { done: true };
    return (words.no as readonly string[]).includes(said) ? {} : { fault: words.yesOrNo(heading, cell) };
  }
  if (field === 'readings') {
    const readings = readReadings(cell, style, undefined);
    return readings ? { readings } : { fault: words.figure(heading, cell) };
  }
  if (field === 'defect' || field === 'repair') {
    const { goal } = understand(engine, { question: cell.slice(0, 200) }, emptyJob);
    // What the records do not know stays as it was written.
    return goal?.kind === field ? { [field]: goal.id } : { note: words.noteLine(heading, cell) };
  }
  const most = textLimits[field] ?? 40;
  return cell.length > most ? { fault: words.long(heading, most) } : { [field]: cell };
}

const textLimits: Readonly<Record<string, number>> = { label: 20, road: 80, photos: 1000, note: 1000 };

function readFigures(
  cell: string,
  heading: string,
  record: QuantityRecord,
  unit: Unit | undefined,
  style: ListStyle,
): CellRead {
  if (isFormula(cell)) return { fault: words.formula(heading) };
  const figures = figuresIn(cell, style);
  if (figures.length === 0) return { fault: words.figure(heading, cell) };
  const [figure] = figures as [FigureRead];
  const ranged = figure.low !== undefined || figures.length > 1;
  if (ranged && record.id === 'patch-depth') {
    const readings = readReadings(cell, style, unit);
    return readings ? { readings } : { fault: words.figure(heading, cell) };
  }
  if (ranged) return { fault: words.several(heading, cell) };
  const own = figure.unit ?? unit ?? record.units[style.system];
  if (unitRow(own).dimension !== record.dimension) return { fault: words.wrongUnit(heading, cell, record.title) };
  const base = toBase(figure.number, own);
  if (base <= 0 && record.dimension !== 'temperature') return { fault: words.nothing(heading, cell) };
  const { min, max } = record.plausible ?? {};
  if ((min && base < toBase(min.number, min.unit)) || (max && base > toBase(max.number, max.unit)))
    return { fault: words.implausible(heading, sayFigure(base, own, { given: true })) };
  return { [record.id]: { number: figure.number, unit: own } };
}

/** Depths at several spots, "1, 2, 1 1/2 in" or "2-3 in"; a unit said once goes for all. */
function readReadings(cell: string, style: ListStyle, unit: Unit | undefined): Figure[] | undefined {
  const figures = figuresIn(cell, style).flatMap((figure) =>
    figure.low !== undefined && figure.high !== undefined
      ? [
          { ...figure, number: figure.low },
          { ...figure, number: figure.high },
        ]
      : [figure],
  );
  const said = figures.findLast((figure) => figure.unit)?.unit ?? unit ?? (style.system === 'metric' ? 'mm' : 'in');
  const readings = figures.map(({ number, unit: own = said }): Figure => ({ number, unit: own }));
  const fits = readings.every(
    ({ number, unit: own }) => unitRow(own).dimension === 'length' && number > 0 && toBase(number, own) < 120,
  );
  return readings.length > 0 && readings.length <= 100 && fits ? readings : undefined;
}

/** "12 x 300 x 2", read as a question would be: the longest side is the length, a small last one the depth. */
function readSize(cell: string, heading: string, style: ListStyle, engine: Engine): CellRead {
  if (isFormula(cell)) return { fault: words.formula(heading) };
  const question = `tons for ${decimal(cell, style)}`.slice(0, 200);
  const { facts } = understand(engine, { question, units: style.system }, emptyJob);
  const sides = new Set(['patch-length', 'patch-width', 'patch-depth', 'patch-area']);
  const found: Record<string, Figure> = {};
  for (const fact of facts)
    if (sides.has(fact.quantity) && 'unit' in fact && fact.number > 0)
      found[fact.quantity] = { number: fact.number, unit: fact.unit };
  return Object.keys(found).length > 0 ? found : { fault: words.size(heading, cell) };
}

/** The figures of a cell; none when anything but figures and marks stands in it. */
function figuresIn(cell: string, style: ListStyle): FigureRead[] {
  const items = read(decimal(cell, style).slice(0, 200), { units: style.system });
  const figures = items.filter((item) => item.kind === 'figure');
  return items.every((item) => item.kind === 'figure' || item.kind === 'mark') ? figures : [];
}

const decimal = (cell: string, { decimalComma }: ListStyle): string =>
  decimalComma ? cell.replace(/\.(?=\d{3}\b)/g, '').replace(/(\d),(?=\d)/g, '$1.') : cell;

/** A day as 2026-05-04, 5/4/2026 (month first, unless that is no month) or 4.5.2026. */
function dayIn(cell: string): string | undefined {
  const iso = cell.slice(0, 10);
  if (isDate(iso) && /^$|^[T ]/.test(cell.slice(10))) return iso;
  const match = /^(\d{1,2})([/.-])(\d{1,2})\2(\d{4})$/.exec(cell);
  if (!match) return undefined;
  const [a, b, year] = [Number(match[1]), Number(match[3]), match[4]!];
  const dayFirst = match[2] === '.' || a > 12;
  const [month, day] = dayFirst ? [b, a] : [a, b];
  const text = `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  return isDate(text) ? text : undefined;
}
