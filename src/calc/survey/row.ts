import { lineAt } from './lines.ts';
import { isDepth, placeOf, type Row, type Typed, typed } from './sheet.ts';
import { tokensOf } from './tokens.ts';
import { placeWords, stationWords } from './words.ts';

/**
 * One row for readings that are there already: a station, or a bare place where one is awaited, and so many depths behind
 * it. Undefined for anything else.
 */
export function readRow(text: string, count: number, awaited: boolean): Row | undefined {
  const tokens = tokensOf(text).filter(({ kind }) => kind !== 'sign');
  const at = tokens.findIndex(({ kind }) => kind === 'station' || (awaited && kind === 'number'));
  const first = tokens[at];
  const station =
    placeOf(first) ?? (first?.kind === 'number' ? { text: text.slice(...first.at), place: typed(first) } : undefined);
  if (!station) return undefined;
  const readings = [];
  let last = first!.at[1];
  for (const token of tokens.slice(at + 1)) {
    if (token.kind === 'station') return undefined;
    if (token.kind === 'number') {
      if (!isDepth(typed(token)) || readings.length === count) return undefined;
      readings.push(typed(token));
      last = token.at[1];
    } else if (
      readings.length > 0 ||
      !(placeWords.has(token.text) || stationWords.has(token.text) || corrections.has(token.text))
    )
      break;
  }
  if (readings.length !== count) return undefined;
  return { station, readings, line: lineAt(text, first!.at[0]), at: [first!.at[0], last] };
}

/** The one length that a text holds; undefined where it holds another number of them. */
export function readLength(text: string): Typed | undefined {
  const numbers = tokensOf(text).filter((token) => token.kind === 'number');
  const [only] = numbers;
  return numbers.length === 1 && only?.kind === 'number' ? typed(only) : undefined;
}

const corrections = new Set(['should', 'be', 'now', 'actually', 'es', 'era']);
