import {
  type Bound,
  coveredUnits,
  type Hedge,
  type HedgeRow,
  hedgesAfter,
  hedgesBefore,
  proposing,
  rangeWords,
  trendWords,
} from './bound-words.ts';
import { at, type Tokens } from './lexer.ts';
import { roleWords } from './near-words.ts';
import { type Measured, type QuantityOptions, readQuantity } from './quantities.ts';
import { readUnit } from './unit.ts';

/** A quantity with what is said about it: how sure, which end, from where to where. */
export interface Reach extends Measured {
  readonly low?: number;
  readonly high?: number;
  readonly bound?: Bound;
  readonly trend?: 'rising' | 'falling';
}

/** "About 2 in", "no more than 1-1/2\"", "between 1 and 1.5 inches", "2 to 3 in or so", "38 and rising". */
export function readReach(tokens: Tokens, i: number, options: QuantityOptions = {}): Reach | undefined {
  let start = i;
  let bound: Bound | undefined;
  let about = false;
  for (let hedges = 0; hedges < 2; hedges++) {
    const row = findHedge(hedgesBefore, tokens, start);
    if (!row || (row.hedge === 'about' && i > 0 && proposing.has(at(tokens, i - 1).text))) break;
    if (row.hedge === 'about') about = true;
    else bound = row.hedge;
    start += row.words.length;
    if (at(tokens, start).text === '.') start++;
  }
  const read =
    at(tokens, start).text === 'between' || at(tokens, start).text === 'entre'
      ? readBetween(tokens, start, options)
      : readRange(tokens, start, options);
  if (!read) return undefined;
  // "20 tons over 2,400 sq ft" spreads, it does not exceed.
  const over = at(tokens, i).text === 'over' && (options.afterFigure || coveredUnits.has(read.unit ?? ''));
  if (over || (bound === 'under' && options.afterFigure)) return undefined;
  return withSuffix(tokens, {
    ...{ ...read, start: i },
    ...(bound ? { bound } : {}),
    ...(about || read.about ? { about: true as const } : {}),
  });
}

function findHedge(rows: ReadonlyMap<string, readonly HedgeRow[]>, tokens: Tokens, i: number): HedgeRow | undefined {
  return rows.get(at(tokens, i).text)?.find((row) => row.words.every((word, k) => at(tokens, i + k).text === word));
}

function readRange(tokens: Tokens, i: number, options: QuantityOptions): Reach | undefined {
  const first = readQuantity(tokens, i, options);
  if (!first) return undefined;
  const join = at(tokens, first.next);
  if (!rangeWords.has(join.text)) return first;
  const second = readQuantity(tokens, first.next + 1, options);
  if (second && join.text === '-' && join.gap && gluedX(tokens, second.next)) return first;
  return (second && joinEnds(tokens, first, second, join.text)) ?? first;
}

function readBetween(tokens: Tokens, i: number, options: QuantityOptions): Reach | undefined {
  const first = readQuantity(tokens, i + 1, options);
  if (!first || !['and', '&', 'y', 'to', '-'].includes(at(tokens, first.next).text)) return undefined;
  const second = readQuantity(tokens, first.next + 1, options);
  return second && joinEnds(tokens, first, second, 'between');
}

/** In "5 - 10x20 patches" the dash sets the count off from the size. */
function gluedX(tokens: Tokens, i: number): boolean {
  return at(tokens, i).text === 'x' && !at(tokens, i).gap;
}

function joinEnds(tokens: Tokens, a: Measured, b: Measured, join: string): Reach | undefined {
  if (a.number >= b.number || a.feetInches !== b.feetInches) return undefined;
  if (a.unit !== undefined && b.unit !== undefined && a.unit !== b.unit) return undefined;
  if ((join === 'or' || join === 'o' || join === 'ó') && b.number > 2 * a.number) return undefined;
  if (join === 'a' && (a.unit !== undefined || b.unit === undefined)) return undefined;
  if (a.unit !== undefined && b.unit === undefined && !endsRange(tokens, b.next)) return undefined;
  const unit = b.unit ?? a.unit;
  const unclear = b.unit === undefined ? (a.unclear ?? b.unclear) : (b.unclear ?? a.unclear);
  return {
    ...{ start: a.start, next: b.next, number: (a.number + b.number) / 2, low: a.number, high: b.number },
    ...(unit ? { unit } : {}),
    ...(unclear === undefined ? {} : { unclear }),
    ...((a.form ?? b.form) ? { form: a.form ?? b.form! } : {}),
    ...(a.about || b.about ? { about: true as const } : {}),
  };
}

/** "2 in to 3" ends there or before a role; in "2 in to 3 patches" the 3 counts something else. */
function endsRange(tokens: Tokens, next: number): boolean {
  const after = at(tokens, next);
  return after.kind !== 'letters' || roleWords.has(after.text);
}

function withSuffix(tokens: Tokens, read: Reach): Reach {
  const plus = at(tokens, read.next);
  if (plus.text === '+' && !plus.gap && at(tokens, read.next + 1).kind !== 'number') {
    return { ...read, bound: read.bound ?? 'at-least', next: read.next + 1 };
  }
  const row = findHedge(hedgesAfter, tokens, skipHyphen(tokens, read.next));
  if (row) return withTrend(tokens, hedged(tokens, read, row));
  return withTrend(tokens, read);
}

function hedged(tokens: Tokens, read: Reach, row: HedgeRow): Reach {
  const next = skipHyphen(tokens, read.next) + row.words.length;
  const after = at(tokens, next);
  const open = row.words.length === 1 && after.kind === 'letters' && row.hedge !== 'about';
  if (open || after.kind === 'number') return read;
  const hedge: Hedge = row.hedge;
  if (hedge !== 'about') return { ...read, bound: hedge, next };
  const unit = row.words[0] === 'ish' && read.unit === undefined ? readUnit(tokens, next) : undefined;
  if (unit?.times === 1) return { ...read, about: true, unit: unit.unit, next: unit.next };
  return { ...read, about: true, next };
}

/** "38 and rising" is said of a temperature only. */
function withTrend(tokens: Tokens, read: Reach): Reach {
  if (read.unit !== undefined && read.unit !== 'degF' && read.unit !== 'degC') return read;
  const joined = ['and', '&', ',', 'y'].includes(at(tokens, read.next).text) ? read.next + 1 : read.next;
  const trend = trendWords.get(at(tokens, joined).text);
  if (!trend) return read;
  const unit = read.unit ? { unit: read.unit } : { unit: 'degF' as const, unclear: 'deg' };
  return { ...read, ...unit, trend, next: joined + 1 };
}

function skipHyphen(tokens: Tokens, i: number): number {
  const hyphen = at(tokens, i);
  return hyphen.text === '-' && !hyphen.gap && !at(tokens, i + 1).gap ? i + 1 : i;
}
