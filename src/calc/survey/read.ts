import { mayHaveReadings } from './hint.ts';
import { readPairs, readStations } from './list.ts';
import { readRuns, spacingsIn } from './runs.ts';
import { isDepth, type Sheet, type Typed, typed } from './sheet.ts';
import { readTable } from './table.ts';
import { type Span, type Token, tokensOf } from './tokens.ts';
import { readingWords, straightedges, widthWords } from './words.ts';

/**
 * Finds depth readings in a text: a table with or without a header (CSV, tabs, blanks), rows behind stations, pairs of place
 * and depth, or a list at equal steps, along the road or across it. Undefined where there are none. Nothing is worked out
 * and nothing guessed: rows that cannot be read are told with their line. Never throws; the work grows with the length.
 */
export function readSurvey(text: string): Sheet | undefined {
  if (!mayHaveReadings(text)) return undefined;
  const sheet = readTable(text) ?? readStations(text) ?? readPairs(text) ?? readRuns(text);
  return sheet && withSurroundings(text, sheet);
}

/** Width, length and straightedge as they are told around the rows. */
function withSurroundings(text: string, sheet: Sheet): Sheet {
  const tokens = tokensOf(text).filter(({ at }) => !sheet.spans.some(([from, to]) => at[0] >= from && at[1] <= to));
  const width = told(tokens, widthWords) ?? toldBefore(tokens);
  const spacing =
    sheet.spacing === undefined && !sheet.rows[0]?.station
      ? spacingsIn(tokens).find(({ across }) => !across)
      : undefined;
  const length =
    !spacing && sheet.spacing === undefined && !sheet.rows[0]?.station && !sheet.across
      ? told(tokens, new Set(['over', 'along', 'in']))
      : undefined;
  const straightedge = straightedgeIn(tokens);
  const counted = countIn(tokens);
  const words = tokens.filter((token) => token.kind === 'word' && readingWords.has(token.text)).map(({ at }) => at);
  return {
    ...sheet,
    ...(width ? { width: width.figure } : {}),
    ...(length ? { length: length.figure } : {}),
    ...(spacing ? { spacing: spacing.figure } : {}),
    ...(straightedge ? { straightedge } : {}),
    ...(counted ? { counted: counted.count } : {}),
    spans: [
      ...sheet.spans,
      ...words,
      ...(spacing ? [spacing.span] : []),
      ...(counted ? [counted.at] : []),
      ...[width, length].flatMap((each) => (each ? [each.span] : [])),
      ...(straightedge ? [straightedge.at] : []),
    ],
  };
}

/** "Across 12 ft", "across the 12 ft lane". */
function told(tokens: readonly Token[], words: ReadonlySet<string>): { figure: Typed; span: Span } | undefined {
  for (const [i, token] of tokens.entries()) {
    if (token.kind !== 'word' || !words.has(token.text)) continue;
    const at = tokens[i + 1]?.kind === 'word' ? i + 2 : i + 1;
    const figure = tokens[at];
    if (
      figure?.kind === 'number' &&
      figure.unit !== 'in' &&
      figure.unit !== 'mm' &&
      figure.unit !== 'cm' &&
      figure.value >= 1
    )
      return { figure: typed(figure), span: [token.at[0], figure.at[1]] };
  }
  return undefined;
}

/** "11 ft lane", "12 wide". */
function toldBefore(tokens: readonly Token[]): { figure: Typed; span: Span } | undefined {
  for (const [i, token] of tokens.entries()) {
    const next = tokens[i + 1];
    const isFeet = token.kind === 'number' && (token.unit === undefined || token.unit === 'ft' || token.unit === 'm');
    if (isFeet && next?.kind === 'word' && /^(?:wide|lane|width|ancho)$/.test(next.text))
      return { figure: typed(token), span: [token.at[0], next.at[1]] };
  }
  return undefined;
}

/** How many readings there are by the asker's own count: "10 readings". */
function countIn(tokens: readonly Token[]): { count: number; at: Span } | undefined {
  const i = tokens.findIndex(
    (token, k) =>
      token.kind === 'number' && token.unit === undefined && Number.isInteger(token.value) && isReadings(tokens[k + 1]),
  );
  const token = tokens[i];
  return token?.kind === 'number' ? { count: token.value, at: token.at } : undefined;
}

const isReadings = (token: Token | undefined): boolean => token?.kind === 'word' && readingWords.has(token.text);

/** "Under a 10 ft straightedge", "3 m straight edge". */
function straightedgeIn(tokens: readonly Token[]): Sheet['straightedge'] {
  const at = tokens.findIndex(
    (token, i) =>
      token.kind === 'word' &&
      (token.text === 'edge' ? isWord(tokens[i - 1], 'straight') : straightedges.has(token.text)),
  );
  if (at < 0) return undefined;
  const before = tokens.slice(Math.max(0, at - 3), at);
  const figure = before.findLast((token) => token.kind === 'number');
  const length = figure?.kind === 'number' && !isDepth(typed(figure)) ? typed(figure) : undefined;
  const first = length ?? tokens[isWord(tokens[at - 1], 'straight') ? at - 1 : at]!;
  return { ...(length ? { length } : {}), at: [first.at[0], tokens[at]!.at[1]] };
}

const isWord = (token: Token | undefined, text: string): boolean => token?.kind === 'word' && token.text === text;
