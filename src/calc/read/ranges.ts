import {
  type Bound,
  coveredUnits,
  type HedgeRow,
  hedgesAfter,
  hedgesBefore,
  proposing,
  rangeWords,
  trendWords,
} from './bound-words.ts';
import { readClock } from './clock.ts';
import { at, type Tokens } from './lexer.ts';
import { type Measured, measured } from './measured.ts';
import { roleWords } from './near-words.ts';
import { readQuantity } from './quantities.ts';
import type { QuantityOptions } from './quantity-options.ts';
import { afterHyphen, phraseAt } from './tokens.ts';
import { readUnit } from './unit.ts';

/** "About 2 in", "no more than 1-1/2\"", "between 1 and 1.5 inches", "2 to 3 in or so", "38 and rising". */
export function readReach(tokens: Tokens, i: number, options: QuantityOptions = {}): Measured | undefined {
  let start = i;
  let bound: Bound | undefined;
  let about = false;
  for (let hedges = 0; hedges < 2; hedges++) {
    const row = phraseAt(hedgesBefore, tokens, start);
    if (!row || (row.hedge === 'about' && i > 0 && proposing.has(at(tokens, i - 1).text))) break;
    if (row.hedge === 'about') about = true;
    else bound = row.hedge;
    start += row.words.length;
    if (at(tokens, start).text === '.') start++;
  }
  const first = at(tokens, start).text;
  const between = first === 'between' || first === 'entre';
  const read = between ? readBetween(tokens, start, options) : readRange(tokens, start, options);
  if (!read) return undefined;
  // "20 tons over 2,400 sq ft" spreads, it does not exceed.
  const over = at(tokens, i).text === 'over' && (options.afterFigure || coveredUnits.has(read.unit ?? ''));
  if (over || (bound === 'under' && options.afterFigure)) return undefined;
  read.start = i;
  read.bound = bound;
  if (about) read.about = true;
  addSuffix(tokens, read);
  addTrend(tokens, read);
  return read;
}

function readRange(tokens: Tokens, i: number, options: QuantityOptions): Measured | undefined {
  const first = readQuantity(tokens, i, options);
  if (!first) return undefined;
  const worded = afterHyphen(tokens, first.next); // 2-to-3-inch
  const place = rangeWords.has(at(tokens, worded).text) ? worded : first.next;
  const join = at(tokens, place);
  if (!rangeWords.has(join.text)) return first;
  const second = readQuantity(tokens, join.text === '-' ? place + 1 : afterHyphen(tokens, place + 1), options);
  if (!second || (join.text === '-' && join.gap && gluedX(tokens, second.next))) return first;
  return joinEnds(tokens, first, second, join.text) ?? first;
}

function readBetween(tokens: Tokens, i: number, options: QuantityOptions): Measured | undefined {
  if (readClock(tokens, i + 1) !== undefined) return undefined;
  const first = readQuantity(tokens, i + 1, options);
  if (!first || !betweenJoins.has(at(tokens, first.next).text)) return undefined;
  const second = readQuantity(tokens, first.next + 1, options);
  return second && joinEnds(tokens, first, second, 'between');
}

const betweenJoins = new Set(['and', '&', 'y', 'to', '-']);
const either = new Set(['or', 'o', 'ó']);

/** In "5 - 10x20 patches" the dash sets the count off from the size. */
function gluedX(tokens: Tokens, i: number): boolean {
  return at(tokens, i).text === 'x' && !at(tokens, i).gap;
}

function joinEnds(tokens: Tokens, a: Measured, b: Measured, join: string): Measured | undefined {
  if (a.number >= b.number || a.feetInches !== b.feetInches) return undefined;
  if (a.unit !== undefined && b.unit !== undefined && a.unit !== b.unit) return undefined;
  if (either.has(join) && b.number > 2 * a.number) return undefined;
  if (join === 'a' && (a.unit !== undefined || b.unit === undefined)) return undefined;
  if (a.unit !== undefined && b.unit === undefined && !endsRange(tokens, b.next)) return undefined;
  const [named, other] = b.unit === undefined ? [a, b] : [b, a];
  const range = measured(a.start, b.next, (a.number + b.number) / 2, named.unit, named.unclear ?? other.unclear);
  range.low = a.number;
  range.high = b.number;
  range.form = a.form ?? b.form;
  range.about = a.about || b.about;
  return range;
}

/** "2 in to 3" ends there or before a role; in "2 in to 3 patches" the 3 counts something else. */
function endsRange(tokens: Tokens, next: number): boolean {
  const after = at(tokens, next);
  return after.kind !== 'letters' || roleWords.has(after.text);
}

function addSuffix(tokens: Tokens, read: Measured): void {
  const plus = at(tokens, read.next);
  if (plus.text === '+' && !plus.gap && at(tokens, read.next + 1).kind !== 'number') {
    read.bound ??= 'at-least';
    read.next++;
    return;
  }
  const start = afterHyphen(tokens, read.next);
  const row = phraseAt(hedgesAfter, tokens, start);
  if (row) addHedge(tokens, read, row, start + row.words.length);
}

function addHedge(tokens: Tokens, read: Measured, row: HedgeRow, next: number): void {
  const after = at(tokens, next);
  // In "12 ft max lift" the max is said of the lift.
  const ofNext = row.words.length === 1 && after.kind === 'letters' && row.hedge !== 'about';
  if (ofNext || after.kind === 'number') return;
  read.next = next;
  if (row.hedge !== 'about') {
    read.bound = row.hedge;
    return;
  }
  read.about = true;
  const unit = row.words[0] === 'ish' && read.unit === undefined ? readUnit(tokens, next) : undefined;
  if (unit?.times !== 1) return;
  read.unit = unit.unit;
  read.next = unit.next;
}

const trendJoins = new Set(['and', '&', ',', 'y']);

/** "38 and rising" is said of a temperature only. */
function addTrend(tokens: Tokens, read: Measured): void {
  if (read.unit !== undefined && read.unit !== 'degF' && read.unit !== 'degC') return;
  const joined = trendJoins.has(at(tokens, read.next).text) ? read.next + 1 : read.next;
  const trend = trendWords.get(at(tokens, joined).text);
  if (!trend) return;
  read.trend = trend;
  read.next = joined + 1;
  if (read.unit !== undefined) return;
  read.unit = 'degF';
  read.unclear = 'deg';
}
