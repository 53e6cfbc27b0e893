import { lineAt } from './lines.ts';
import { isDepth, placeOf, type Row, type RowFault, type Sheet, type Typed, typed } from './sheet.ts';
import { type Span, type Token, tokensOf } from './tokens.ts';
import { claims, joins, placeWords, readingWords, stationWords, weakReadingWords } from './words.ts';

type Num = Extract<Token, { kind: 'number' }>;

/** Rows typed in a line, each behind its station: "0+00 1.25 1.5 1, 0+25 1 2 1". Undefined with fewer than two stations that have readings. */
export function readStations(text: string): Sheet | undefined {
  const tokens = tokensOf(text);
  const starts = tokens.flatMap((token, i) => (token.kind === 'station' && !isStretch(tokens, i) ? [i] : []));
  if (starts.length < 2) return undefined;
  const rows: Row[] = [];
  const faults: RowFault[] = [];
  const spans: Span[] = [];
  starts.forEach((start, k) => {
    const isLast = k === starts.length - 1;
    const { readings, end, stray } = readingsAfter(tokens, start + 1, starts[k + 1] ?? tokens.length);
    const station = placeOf(tokens[start])!;
    const from = opens(tokens, start);
    const until = isLast ? end : (starts[k + 1] ?? tokens.length) - 1;
    const last = tokens[Math.max(start, isLast ? end - 1 : until)]!;
    const at: Span = [tokens[from]!.at[0], Math.max(last.at[1], tokens[start]!.at[1])];
    const line = lineAt(text, at[0]);
    const typedRow = rowText(text, at, isLast ? undefined : tokens[opens(tokens, starts[k + 1]!)]!.at[0]);
    spans.push(at);
    if (readings.length === 0 || (stray && !isLast))
      faults.push({
        why: stray ? 'no-number' : 'no-reading',
        line,
        text: typedRow,
        at,
        ...(stray ? { cell: text.slice(...stray) } : {}),
      });
    else rows.push({ station, readings, line, at });
  });
  if (rows.length === 0 || rows.length + faults.length < 2) return undefined;
  return evened(text, { rows, faults, across: false, left: [], spans });
}

const rowText = (text: string, [from, to]: Span, next?: number): string =>
  text.slice(from, next ?? to).replace(/[\s,;]{1,9}$/, '');

/** Rows with another number of readings than most have: one was left out, or typed twice. */
function evened(whole: string, sheet: Sheet): Sheet {
  const counts = new Map<number, number>();
  for (const { readings } of sheet.rows) counts.set(readings.length, (counts.get(readings.length) ?? 0) + 1);
  const [of] = [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0] ?? [0];
  const odd = sheet.rows.filter(({ readings }) => readings.length !== of);
  return {
    ...sheet,
    rows: sheet.rows.filter(({ readings }) => readings.length === of),
    faults: [
      ...sheet.faults,
      ...odd.map(
        ({ readings, line, at }): RowFault => ({
          why: readings.length < of ? 'too-few' : 'too-many',
          line,
          at,
          text: rowText(whole, at),
          has: readings.length,
          of,
        }),
      ),
    ],
  };
}

/** "12+50 to 14+00" is a stretch of road, and no place where something was read. */
function isStretch(tokens: readonly Token[], i: number): boolean {
  const joined = (at: number): boolean => {
    const token = tokens[at];
    return (
      token !== undefined &&
      token.kind !== 'number' &&
      token.kind !== 'station' &&
      /^(?:to|thru|through|hasta|a|-|–)$/.test(token.text)
    );
  };
  const before = tokens[i - 1];
  const skip = before?.kind === 'word' && stationWords.has(before.text) ? 2 : 1;
  return (
    (joined(i + 1) && tokens.slice(i + 2, i + 4).some(({ kind }) => kind === 'station')) ||
    (joined(i - skip) && tokens[i - skip - 1]?.kind === 'station')
  );
}

const opens = (tokens: readonly Token[], at: number): number => {
  const before = tokens[at - 1];
  return before?.kind === 'word' && stationWords.has(before.text) ? at - 1 : at;
};

/** Depths from a token on, up to a word that says something else; a number that such a word claims is not one of them. */
function readingsAfter(
  tokens: readonly Token[],
  from: number,
  to: number,
): { readings: Typed[]; end: number; stray?: Span } {
  const readings: Typed[] = [];
  let end = from;
  for (let i = from; i < to; i++) {
    const token = tokens[i]!;
    if (token.kind === 'station') break;
    if (token.kind === 'number') {
      if (!isDepth(typed(token))) return { readings, end, stray: token.at };
      if (isClaimed(tokens, i)) return { readings, end, stray: (tokens[i + 1] ?? token).at };
      readings.push(typed(token));
      end = i + 1;
      continue;
    }
    if (token.kind === 'sign') {
      if (ends.has(token.text)) break;
      continue;
    }
    if (placeWords.has(token.text) || joins.has(token.text)) continue;
    if (stationWords.has(token.text) && (i === to - 1 || tokens[i + 1]?.kind === 'station')) break;
    return { readings, end, stray: token.at };
  }
  return { readings, end };
}

const ends = new Set([';', '\n', '?', '!']);

/** A number that the word behind it, or the one before, takes for itself: 12 wide, every 10. */
export function isClaimed(tokens: readonly Token[], i: number): boolean {
  const next = tokens[i + 1];
  const before = tokens[i - 1];
  const number = tokens[i] as Num;
  if (next && next.kind !== 'number' && next.kind !== 'station' && (claims.has(next.text) || next.text === '%'))
    return number.unit === undefined || number.unit === 'ft' || next.text !== 'by';
  return before?.kind === 'word' && /^(?:every|each|cada|width|wide|across|over|long|by|x)$/.test(before.text);
}

/** Pairs of a place and a depth: "at 0 ft 1 in, at 10 ft 1.5 in". Three of them at least. */
export function readPairs(text: string): Sheet | undefined {
  const tokens = tokensOf(text);
  const rows: Row[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const place = tokens[i]!;
    if (place.kind !== 'number' || !(place.unit === 'ft' || place.unit === 'm' || place.unit === 'yd')) continue;
    let k = i + 1;
    while (k < tokens.length && isLink(tokens[k]!)) k++;
    const depth = tokens[k];
    const linked = k > i + 1;
    if (
      depth?.kind !== 'number' ||
      !(depth.unit === undefined ? linked && !isClaimed(tokens, k) : ['in', 'mm', 'cm'].includes(depth.unit))
    )
      continue;
    const at: Span = [tokens[opens(tokens, i)]!.at[0], depth.at[1]];
    rows.push({
      station: { text: text.slice(...place.at), place: typed(place) },
      readings: [typed(depth)],
      line: lineAt(text, at[0]),
      at,
    });
    i = k;
  }
  const places = rows.map(({ station }) => station!.place.number);
  if (rows.length < 3 || new Set(places).size !== places.length) return undefined;
  return { rows, faults: [], across: false, left: [], spans: [[rows[0]!.at[0], rows.at(-1)!.at[1]]] };
}

const isLink = (token: Token): boolean =>
  (token.kind === 'sign' && [':', '=', '-', '–'].includes(token.text)) ||
  (token.kind === 'word' && /^(?:is|was|reads|deep|has|es)$/.test(token.text));

/** True where the text speaks of readings at all. */
export const speaksOfReadings = (tokens: readonly Token[]): boolean =>
  tokens.some((token) => token.kind === 'word' && (readingWords.has(token.text) || weakReadingWords.has(token.text)));
