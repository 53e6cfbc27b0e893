import { lineAt } from './lines.ts';
import { isClaimed } from './list.ts';
import { isDepth, type Row, type Sheet, type Typed, typed } from './sheet.ts';
import { type Span, type Token, tokensOf } from './tokens.ts';
import { acrossWords, apartWords, everyWords, joins, readingWords, weakReadingWords } from './words.ts';

type Num = Extract<Token, { kind: 'number' }>;
/** Numbers in a row, in groups where a sign parts the rows; the last may be of feet, for a list of places. */
interface Run {
  readonly groups: Typed[][];
  readonly from: number;
  readonly to: number;
  readonly places: boolean;
}

const least = 3;

/** Readings in a list, at equal steps or at places of their own: "readings every 10 ft: 1, 1.5, 2, 1 in". */
export function readRuns(text: string): Sheet | undefined {
  const tokens = tokensOf(text);
  const gate = tokens.findIndex((token) => token.kind === 'word' && readingWords.has(token.text));
  const weak = tokens.findIndex((token) => token.kind === 'word' && weakReadingWords.has(token.text));
  const spacings = spacingsIn(tokens);
  if (gate < 0 && weak < 0 && spacings.length === 0) return undefined;
  const runs = runsIn(tokens, new Set(spacings.map(({ at }) => at)));
  const depths = runs.filter(({ places, groups }) => !places && groups.flat().length >= (gate < 0 ? least + 1 : least));
  const length = ({ groups }: Run): number => groups.flat().length;
  const pair = runs
    .filter(({ places }) => places)
    .flatMap((places) =>
      runs
        .filter(
          (run) => !run.places && run.groups.length === 1 && length(run) === length(places) && length(run) >= least,
        )
        .map((run) => ({ places, run })),
    )[0];
  const chosen =
    pair?.run ?? [...depths].sort((a, b) => Number(b.from > gate) - Number(a.from > gate) || length(b) - length(a))[0];
  if (!chosen || !(pair || gate >= 0 || spacings.length > 0 || length(chosen) > least)) return undefined;
  const isAcross = acrossIn(tokens, chosen, spacings);
  const row = (readings: Typed[], place?: Typed): Row => {
    const at: Span = [readings[0]!.at[0], readings.at(-1)!.at[1]];
    return {
      ...(place ? { station: { text: text.slice(...place.at), place } } : {}),
      readings,
      line: lineAt(text, at[0]),
      at,
    };
  };
  const placesRead = pair?.places.groups.flat();
  const single = chosen.groups.length === 1;
  const rows =
    single && !isAcross
      ? chosen.groups[0]!.map((reading, i) =>
          row([reading], placesRead?.[i] && withUnit(placesRead[i]!, placesRead.at(-1)!.unit)),
        )
      : chosen.groups.map((group) => row(group));
  const unit = chosen.groups.flat().at(-1)!.unit;
  const along = spacings.find(({ across }) => !across);
  const over = spacings.find(({ across }) => across);
  return {
    rows: rows.map((each) => ({ ...each, readings: each.readings.map((reading) => withUnit(reading, unit)) })),
    faults: [],
    across: isAcross && single,
    ...(isAcross && single ? stepOf(over ?? along) : along ? { spacing: along.figure } : {}),
    ...(!single && over ? { step: over.figure } : {}),
    ...(isAcross && single && placesRead ? { offsets: placesRead } : {}),
    left: [],
    spans: [chosen, ...(pair ? [pair.places] : [])]
      .map((run): Span => [tokens[run.from]!.at[0], tokens[run.to - 1]!.at[1]])
      .concat(spacings.map(({ span }) => span)),
  };
}

const stepOf = (spacing: Spacing | undefined) => (spacing ? { spacing: spacing.figure } : {});

/** The unit behind the last of a list is that of all. */
const withUnit = (figure: Typed, unit: Typed['unit']): Typed => (figure.unit || !unit ? figure : { ...figure, unit });

interface Spacing {
  readonly figure: Typed;
  readonly across: boolean;
  /** Place of its number among the tokens. */
  readonly at: number;
  readonly span: Span;
}

/** "Every 10 ft", "10 ft apart", "at 25 ft intervals". */
export function spacingsIn(tokens: readonly Token[]): Spacing[] {
  return tokens.flatMap((token, i): Spacing[] => {
    if (token.kind !== 'number' || token.unit === 'in' || token.unit === 'mm') return [];
    const [before, next] = [tokens[i - 1], tokens[i + 1]];
    const every = before?.kind === 'word' && everyWords.has(before.text);
    const apart = next?.kind === 'word' && apartWords.has(next.text);
    if (!every && !apart) return [];
    const near = [tokens[i - 2], apart ? tokens[i + 2] : next];
    const across = near.some(
      (each, k) =>
        each?.kind === 'word' &&
        acrossWords.has(each.text) &&
        !(k === 1 && tokens[i + (apart ? 3 : 2)]?.kind === 'number'),
    );
    return [
      {
        figure: typed(token),
        across,
        at: i,
        span: [tokens[every ? i - 1 : i]!.at[0], apart ? next.at[1] : token.at[1]],
      },
    ];
  });
}

/** Signs that part the rows of a list. */
const parts = new Set([';', '/', '|', '\n']);

function runsIn(tokens: readonly Token[], taken: ReadonlySet<number>): Run[] {
  const runs: Run[] = [];
  for (let i = 0; i < tokens.length; i++) {
    if (!isListed(tokens, i, taken)) continue;
    const groups: Typed[][] = [[]];
    let to = i;
    let k = i;
    let places = false;
    for (; k < tokens.length; k++) {
      const token = tokens[k]!;
      if (token.kind === 'number') {
        const far = token.unit === 'ft' || token.unit === 'm';
        if (!isListed(tokens, k, taken) && !(far && !isClaimed(tokens, k) && !taken.has(k))) break;
        groups.at(-1)!.push(typed(token));
        to = k + 1;
        places = far && Math.abs(token.value) >= 1;
        if (places) break;
      } else if (token.kind === 'sign' && parts.has(token.text)) {
        if (groups.at(-1)!.length > 0) groups.push([]);
      } else if (!(token.kind === 'sign' && token.text === ',') && !(token.kind === 'word' && joins.has(token.text)))
        break;
    }
    const kept = groups.filter((group) => group.length > 0);
    runs.push({
      groups: kept.every((group) => group.length === kept[0]!.length) ? kept : [kept.flat()],
      from: i,
      to,
      places,
    });
    i = Math.max(i, k - 1);
  }
  return runs;
}

function isListed(tokens: readonly Token[], i: number, taken: ReadonlySet<number>): boolean {
  const token = tokens[i] as Num;
  return token.kind === 'number' && !taken.has(i) && isDepth(typed(token)) && !isClaimed(tokens, i);
}

/** One section across the road: so it is said beside the list, or the steps add up to the width. */
function acrossIn(tokens: readonly Token[], run: Run, spacings: readonly Spacing[]): boolean {
  const figures = run.groups.flat().length;
  if (spacings.some(({ across }) => across)) return run.groups.length === 1 && !spacings.some(({ across }) => !across);
  const at = tokens.findIndex((token) => token.kind === 'word' && acrossWords.has(token.text));
  if (at < 0) return false;
  const width = tokens
    .slice(at + 1, at + 4)
    .find((token): token is Num => token.kind === 'number' && token.unit !== 'in');
  const [spacing] = spacings;
  if (spacing && width) return Math.abs((figures - 1) * spacing.figure.number - width.value) < 1e-6;
  return at < run.from;
}
