import { isUnit, type Unit } from '../units.ts';
import { isDimensionLetter } from './dimension-letters.ts';
import { isInch } from './inch.ts';
import { at, type Tokens } from './lexer.ts';
import { unitRows as rows, type UnitRow } from './unit-rows.ts';

/** One unit as typed, before anything it is "per". */
export interface Atom {
  readonly unit: Unit | 'g';
  readonly unclear: string | undefined;
  /** How many of `unit` the word stands for: a station is 100 ft. */
  readonly times: number;
  readonly next: number;
  /** A whole word (feet), not a mark or an abbreviation. */
  readonly spelled: boolean;
  readonly spanish: boolean;
  /** The first word or the mark of it. */
  readonly alias: string;
}

/** Where the unit stands: after a number and a blank, right behind a number or hyphen, or after a "per". */
export type Standing = 'spaced' | 'glued' | 'rate';

/** First words of the units that are spelled out: "inch and a half", "tons: 20". */
export const unitStarts: readonly string[] = [...rows.keys()].filter((word) => word.length > 1);

/** True when a word is the name of a unit, standing with or without a number. */
export function isUnitWord(word: string): boolean {
  return rows.get(word)?.some((row) => row.words.length === 1 && row.sort !== 'exact') ?? false;
}

/** True when a word is a Spanish unit. */
export function isSpanishUnit(word: string): boolean {
  return rows.get(word)?.some((row) => row.sort === 'spanish') ?? false;
}

/** The unit at token `i`, a word, letters or a mark; undefined when none stands there. */
export function readAtom(tokens: Tokens, i: number, standing: Standing): Atom | undefined {
  const first = at(tokens, i);
  if (first.kind === 'sign') return readMark(tokens, i);
  if (first.kind !== 'letters') return undefined;
  const list = rows.get(first.text);
  if (!list || (first.text.length === 1 && isDimensionLetter(tokens, i))) return undefined;
  for (const row of list) {
    const next = matchRow(tokens, i, row, standing);
    if (next === undefined) continue;
    if (first.text === 'in' && standing === 'spaced' && !isInch(tokens, i)) continue;
    return raised(tokens, next, row);
  }
  return undefined;
}

function atom(unit: Atom['unit'], next: number, alias: string, unclear?: string): Atom {
  return { unit, unclear, times: 1, next, spelled: false, spanish: false, alias };
}

function readMark(tokens: Tokens, i: number): Atom | undefined {
  const mark = at(tokens, i).text;
  const after = at(tokens, i + 1);
  switch (mark) {
    case "'":
      if (after.text === 's' && !after.gap) return undefined; // the 40's
      if (isClippedAnd(tokens, i)) return undefined;
      return after.text === "'" && !after.gap ? atom('in', i + 2, mark) : atom('ft', i + 1, mark);
    case '"':
      return atom('in', i + 1, mark);
    case '%':
      return atom('%', i + 1, mark);
    case '$':
      return after.kind === 'number' || at(tokens, i).gap ? undefined : atom('USD', i + 1, mark); // 85$ a ton
    case '#':
      return after.kind === 'number' && !after.gap ? undefined : atom('lb', i + 1, mark);
    case '\u00b0':
      if (after.text === 'f') return atom('degF', i + 2, mark);
      return after.text === 'c' ? atom('degC', i + 2, mark) : atom('degF', i + 1, mark, 'deg');
    default:
      return undefined;
  }
}

/** The quote before or after a clipped "and" is no foot: two 'n' a half, inch an' a half. */
function isClippedAnd(tokens: Tokens, i: number): boolean {
  const [before, quote, after] = [at(tokens, i - 1), at(tokens, i), at(tokens, i + 1)];
  if (after.text === 'n' && !after.gap && quote.gap) return true;
  return !quote.gap && (before.text === 'n' || before.text === 'an');
}

/** The token after the words of `row`, or undefined. Full stops, the slash of "sq/yd" and the hyphen of "lane-mile" may stand between them. */
function matchRow(tokens: Tokens, i: number, row: UnitRow, standing: Standing): number | undefined {
  if (row.sort === 'exact' && !matchesCase(tokens, i, row, standing)) return undefined;
  let next = i + 1;
  for (let k = 1; k < row.words.length; k++) {
    const between = at(tokens, next);
    const dot = between.text === '.' && !between.gap;
    if (row.dotted && (!dot || at(tokens, next + 1).gap)) return undefined;
    const joint = !between.gap && k === 1 && (between.text === '/' ? 's' : between.text === '-' ? 'sl' : '');
    if (dot || (joint && joint.includes(row.words[0]![0]!))) next++;
    if (at(tokens, next).text !== row.words[k] || at(tokens, next).kind !== 'letters') return undefined;
    next++;
  }
  return row.sort === 'short' || row.sort === 'exact' ? afterStop(tokens, next) : next;
}

/** T and t differ; a capital M or H is no unit of its own, yet it is one in M2, KM/H and the like. */
function matchesCase(tokens: Tokens, i: number, row: UnitRow, standing: Standing): boolean {
  const { raw, text } = at(tokens, i);
  if (raw === row.words[0]) return true;
  if (raw.toLowerCase() !== row.words[0]) return false;
  return text === 'm' ? standing === 'rate' || isPower(tokens, i + 1) : text === 'h' && standing === 'rate';
}

/** A full stop belongs to the abbreviation unless it ends the sentence. */
function afterStop(tokens: Tokens, next: number): number {
  const stop = at(tokens, next);
  if (stop.text !== '.' || stop.gap) return next;
  const after = at(tokens, next + 1);
  const ends = after.kind === 'end' || after.text === '\n' || after.text === '.';
  const capital = after.gap && after.kind === 'letters' && after.raw[0] !== after.text[0];
  return ends || capital ? next : next + 1;
}

/** ft2, yd³, m^2: a power glued to a length. */
function raised(tokens: Tokens, next: number, row: UnitRow): Atom {
  const { unit, unclear, times = 1 } = row.of;
  const spelled = row.sort === 'long' || row.sort === 'spanish';
  const plain = { unit, unclear, times, next, spelled, spanish: row.sort === 'spanish', alias: row.words[0]! };
  if (!isPower(tokens, next) || times !== 1) return plain;
  const caret = at(tokens, next).text === '^' ? 1 : 0;
  const power = `${unit}${at(tokens, next + caret).text}`;
  return isUnit(power) ? { ...plain, unit: power, unclear: undefined, next: next + caret + 1 } : plain;
}

function isPower(tokens: Tokens, i: number): boolean {
  const caret = at(tokens, i).text === '^' && !at(tokens, i).gap ? 1 : 0;
  const power = at(tokens, i + caret);
  return (power.text === '2' || power.text === '3') && !power.gap;
}
