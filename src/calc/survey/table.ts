import { type Line, linesOf } from './lines.ts';
import { isDepth, placeOf, type Row, type RowFault, type Sheet, type Typed, typed } from './sheet.ts';
import { type LengthUnit, type Span, type Token, tokensOf } from './tokens.ts';
import {
  decimals,
  depthColumns,
  noteColumns,
  readingWords,
  stationColumns,
  stationWords,
  widthColumns,
} from './words.ts';

type Cells = readonly { readonly text: string; readonly at: Span }[];
type Kind = 'station' | 'depth' | 'width' | 'note';
interface Column {
  readonly kind: Kind;
  readonly unit?: LengthUnit;
  readonly offset?: Typed;
  readonly name: string;
}

const marks = ['\t', ';', '|', ','] as const;

/** A table of readings, one row a line, with or without a header: pasted rows and CSV. Undefined where there is none. */
export function readTable(typedText: string): Sheet | undefined {
  const text = relined(typedText);
  const lines = linesOf(text);
  if (lines.length < 2) return undefined;
  const mark = markOf(lines);
  const isRow = lines.map((line) => looksLikeRow(cellsOf(line, mark), mark !== undefined));
  const first = isRow.indexOf(true);
  let last = isRow.lastIndexOf(true);
  while (last > 0 && isBrokenRow(lines[last + 1], mark)) last++;
  if (first < 0 || isRow.filter(Boolean).length < 2) return undefined;
  const headerAt = headerBefore(lines, first, mark);
  const widest = Math.max(...lines.filter((_, i) => isRow[i]).map((line) => cellsOf(line, mark).length));
  const columns =
    headerAt === undefined
      ? plainColumns(
          lines.filter((_, i) => isRow[i]),
          mark,
          widest,
        )
      : columnsOf(lines[headerAt]!, mark);
  if (!columns) return undefined;
  const told =
    headerAt !== undefined ||
    /\d\+\d\d/.test(text) ||
    tokensOf(text).some(({ kind, ...token }) => kind === 'word' && 'text' in token && readingWords.has(token.text));
  if (!told) return undefined;
  const rows: Row[] = [];
  const faults: RowFault[] = [];
  for (let i = (headerAt ?? first - 1) + 1; i <= last; i++) {
    const line = lines[i]!;
    if (line.text.trim() === '') continue;
    const read = rowOf(line, cellsOf(line, mark), columns);
    if ('why' in read) faults.push(read);
    else rows.push(read);
  }
  const spans: Span[] = [[lines[headerAt ?? first]!.at[0], lines[last]!.at[1]]];
  const offsets = columns.filter(({ kind }) => kind === 'depth').flatMap(({ offset }) => offset ?? []);
  const depths = columns.filter(({ kind }) => kind === 'depth').length;
  return {
    rows,
    faults,
    across: false,
    ...(offsets.length === depths && depths > 1 ? { offsets } : {}),
    left: columns.filter(({ kind }) => kind === 'note').map(({ name }) => name),
    spans,
  };
}

/** Where a box of one line has made blanks of the line ends of a pasted CSV, they are put back: rows without blanks in them, one behind the other. */
function relined(text: string): string {
  if (text.includes('\n')) return text;
  const rows = text.match(/(?<![^ ])[\d+.]{1,12}(?:[,;|\t][^\s,;|]{0,20}){1,30}(?![^ ])/g) ?? [];
  const marks = rows.map((row) => row.replace(/[^,;|\t]/g, '').length);
  if (rows.length < 2 || marks.some((count) => count !== marks[0])) return text;
  return text.replace(/ (?=[\d+.]{1,12}[,;|\t]\S)/g, '\n').replace(/(\n[^\n ]{1,300}) (?=[^\n]{0,2000}$)/, '$1\n');
}

/** What parts the cells: the first mark that stands equally often, once or more, in two lines with figures. */
function markOf(lines: readonly Line[]): (typeof marks)[number] | undefined {
  const figured = lines.filter(({ text }) => /^\s*(?:(?:sta\.?|station|at)\s*)?-?[\d.]/i.test(text));
  return marks.find(
    (mark) => figured.length > 1 && figured.filter(({ text }) => text.includes(mark)).length > figured.length / 2,
  );
}

function cellsOf({ text, at }: Line, mark: string | undefined): Cells {
  if (mark === undefined)
    return tokensOf(text).map((token) => ({ text: text.slice(...token.at), at: moved(token.at, at[0]) }));
  let start = 0;
  const cells = text.split(mark).map((cell) => {
    const lead = cell.length - cell.trimStart().length;
    const from = start + lead;
    start += cell.length + mark.length;
    return { text: cell.trim(), at: [at[0] + from, at[0] + from + cell.trim().length] as const };
  });
  while (mark === '|' && cells.length > 1 && cells[0]!.text === '') cells.shift();
  while (cells.length > 1 && cells.at(-1)!.text === '') cells.pop();
  return cells;
}

const moved = ([from, to]: Span, by: number): Span => [from + by, to + by];

/** A cell as a figure or a station; `1,25` between other marks is a decimal. */
function figureIn({ text, at }: Cells[number]): Token | undefined {
  const tokens = tokensOf(decimals.test(text) ? text.replace(',', '.') : text).filter(
    (token) =>
      !(token.kind === 'word' && stationWords.has(token.text)) && !(token.kind === 'sign' && token.text === '.'),
  );
  const [token] = tokens;
  return tokens.length === 1 && token && token.kind !== 'word' && token.kind !== 'sign' ? { ...token, at } : undefined;
}

/** Figures all through; in a line without marks a word is allowed only before the first. */
function looksLikeRow(cells: Cells, marked: boolean): boolean {
  const kept = marked
    ? cells
    : cells.filter(({ text }, i) => !(i === 0 && stationWords.has(text.toLowerCase().replace('.', ''))));
  const figures = kept.map(figureIn);
  if (figures[0] === undefined) return false;
  if (!marked) return figures.every((token, i) => token !== undefined && (i === 0 || token.kind === 'number'));
  return kept.length > 1 && figures.filter((token) => token).length * 2 >= kept.length;
}

/** A row at the end that cannot be read is a row all the same: it begins with a place. */
function isBrokenRow(line: Line | undefined, mark: string | undefined): boolean {
  const [cell] = line ? cellsOf(line, mark) : [];
  if (!line || !cell || !/^\d\S{0,12}$/.test(cell.text)) return false;
  return mark === undefined ? figureIn(cell)?.kind === 'station' : line.text.includes(mark);
}

function headerBefore(lines: readonly Line[], first: number, mark: string | undefined): number | undefined {
  for (let i = first - 1; i >= 0; i--) {
    const line = lines[i]!;
    if (line.text.trim() === '') continue;
    const cells = cellsOf(line, mark);
    if (mark !== undefined && cells.length < 2 && !isStationName(cells[0]?.text ?? '')) return undefined;
    const head = /^[\p{L}.]{1,20}/u.exec(cells[0]?.text.toLowerCase() ?? '')?.[0].replace('.', '') ?? '';
    const named = stationColumns.has(head) || depthColumns.has(head);
    return named && (mark !== undefined || !/[?]/.test(line.text)) ? i : undefined;
  }
  return undefined;
}

const isStationName = (text: string): boolean => stationColumns.has(text.toLowerCase());

const unitOfHead = (text: string): LengthUnit | undefined => {
  const found = /(?:^|[\s_([,.])(in|inch|inches|ft|feet|mm|cm|m|meters?|metres?|yd)[\])]?\s*$/i
    .exec(text)?.[1]
    ?.toLowerCase();
  if (!found) return undefined;
  return found.startsWith('inch') ? 'in' : found === 'feet' ? 'ft' : /^met/.test(found) ? 'm' : (found as LengthUnit);
};

function columnsOf(line: Line, mark: string | undefined): Column[] | undefined {
  const cells = mark === undefined ? headCells(line) : cellsOf(line, mark);
  const columns = cells.map(({ text, at }, i): Column => {
    const name = text.toLowerCase();
    const word = /[\p{L}]{1,20}/u.exec(name)?.[0] ?? '';
    const unit = unitOfHead(name);
    const base = { name: text, ...(unit ? { unit } : {}) };
    if (i === 0 && stationColumns.has(word)) return { kind: 'station', ...base };
    if (noteColumns.has(word)) return { kind: 'note', ...base };
    if (widthColumns.has(word)) return { kind: 'width', ...base };
    const number = tokensOf(text).find((token) => token.kind === 'number');
    const offset =
      number?.kind === 'number' && number.unit !== 'in' && number.unit !== 'mm' ? { ...typed(number), at } : undefined;
    return offset ? { kind: 'depth', name: text, offset } : { kind: 'depth', ...base };
  });
  return columns.some(({ kind }) => kind === 'depth') ? columns : undefined;
}

/** Names of columns parted by blanks; a unit in brackets, or alone, goes with the name before it. */
function headCells({ text, at }: Line): Cells {
  const cells: { text: string; at: Span }[] = [];
  for (const found of text.matchAll(/\S{1,40}/g)) {
    const span: Span = [at[0] + found.index, at[0] + found.index + found[0].length];
    if (cells.length > 0 && /^[([]?(?:in|inch|inches|ft|feet|mm|cm|m)[\])]?$/i.test(found[0]))
      cells[cells.length - 1] = { text: `${cells.at(-1)!.text} ${found[0]}`, at: [cells.at(-1)!.at[0], span[1]] };
    else cells.push({ text: found[0], at: span });
  }
  return cells;
}

/** Without a header the first column is the place: a station, or a figure that rises with steps that no depth has. */
function plainColumns(lines: readonly Line[], mark: string | undefined, widest: number): Column[] | undefined {
  const firsts = lines.map((line) =>
    figureIn(cellsOf(line, mark).filter(({ text }) => !stationWords.has(text.toLowerCase()))[0]!),
  );
  const stations = firsts.every((token) => token?.kind === 'station');
  const numbers = firsts.map((token) => (token?.kind === 'number' ? token.value : Number.NaN));
  const rising =
    numbers.every((n, i) => i === 0 || n > numbers[i - 1]!) &&
    numbers.at(-1)! - numbers[0]! >= 5 * (numbers.length - 1);
  const placed = stations || (rising && widest > 1);
  const words =
    mark === undefined && lines.every((line) => stationWords.has(cellsOf(line, mark)[0]!.text.toLowerCase())) ? 1 : 0;
  const depths = widest - words - (placed ? 1 : 0);
  if (depths < 1) return undefined;
  return [
    ...(placed ? [{ kind: 'station', name: '' } as const] : []),
    ...Array.from({ length: depths }, () => ({ kind: 'depth', name: '' }) as const),
  ];
}

function rowOf(line: Line, all: Cells, columns: readonly Column[]): Row | RowFault {
  const text = line.text.trim();
  const cells = all.filter(
    ({ text: cell }, i) => !(i === 0 && all.length > columns.length && stationWords.has(cell.toLowerCase())),
  );
  const fault = (why: RowFault['why'], more: Partial<RowFault> = {}): RowFault => ({
    why,
    line: line.number,
    text,
    at: line.at,
    ...more,
  });
  const wanted = columns.filter(({ kind }) => kind === 'depth').length;
  const readings: Typed[] = [];
  let station: Row['station'];
  let width: Typed | undefined;
  for (const [i, column] of columns.entries()) {
    if (column.kind === 'note') continue;
    const cell = cells[i];
    if (!cell || cell.text === '') continue;
    const token = figureIn(cell);
    if (!token) return fault(column.kind === 'station' ? 'no-station' : 'no-number', { cell: cell.text });
    if (column.kind === 'station') {
      station =
        placeOf(token) ??
        (token.kind === 'number' ? { text: cell.text, place: withUnit(typed(token), column.unit) } : undefined);
      continue;
    }
    if (token.kind !== 'number') return fault('no-number', { cell: cell.text });
    const figure = withUnit(typed(token), column.unit);
    if (column.kind === 'width') width = figure;
    else if (isDepth(figure)) readings.push(figure);
    else return fault('unit', { cell: cell.text });
  }
  const extra = columns.some(({ kind }) => kind === 'note') ? 0 : cells.length - columns.length;
  if (columns.some(({ kind }) => kind === 'station') && !station) return fault('no-station');
  if (extra > 0) return fault('too-many', { has: readings.length + extra, of: wanted });
  if (readings.length < wanted)
    return fault(readings.length === 0 ? 'no-reading' : 'too-few', { has: readings.length, of: wanted });
  return { ...(station ? { station } : {}), ...(width ? { width } : {}), readings, line: line.number, at: line.at };
}

const withUnit = (figure: Typed, unit: LengthUnit | undefined): Typed =>
  figure.unit || !unit ? figure : { ...figure, unit };
