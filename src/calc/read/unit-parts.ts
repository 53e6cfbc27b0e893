import { unitRow } from '../units.ts';
import { at, type Tokens } from './lexer.ts';
import type { Measured } from './measured.ts';
import { roleWords } from './near-words.ts';
import { readAndPart } from './parts.ts';
import { endsThought } from './tokens.ts';
import { readPer, readUnit, type UnitRead } from './unit.ts';

/**
 * Adds the part after a unit to the figure before it: "2 inches AND A HALF", "inch AND A QUARTER tons", "una pulgada Y
 * MEDIA", with what the whole is per ("a ton and a half AN HOUR"). False when no part stands there, or when the part has
 * a unit of its own ("12 ft and a half mile").
 */
export function addPart(tokens: Tokens, whole: Measured, unit: UnitRead): boolean {
  const part = readAndPart(tokens, unit.next);
  const end = part && endOfPart(tokens, part.next, whole, unit);
  if (!part || end === undefined) return false;
  const rate = readPer(tokens, end, unit.unit);
  whole.number = (whole.number + part.number * unit.times) * rate.times;
  whole.unit = rate.unit;
  whole.unclear ??= rate.unclear;
  whole.next = rate.next;
  return true;
}

const measures = new Set(['depth', 'thickness', 'width', 'length', 'height']);

/** The token after the part that ends at `next`, and after the unit when it is said again; undefined when it is no part of `whole`. */
function endOfPart(tokens: Tokens, next: number, whole: Measured, unit: UnitRead): number | undefined {
  const own = readUnit(tokens, next);
  const after = at(tokens, next);
  // "An inch and a half in depth": a preposition, and no unit of the half.
  if (after.text === 'in' && measures.has(at(tokens, next + 1).text)) return next;
  if (!own) {
    // After a mark or an abbreviation a half may be of something else: 12' and a half load.
    return unit.spelled || endsThought(after) || roleWords.has(after.text) ? next : undefined;
  }
  const plural = own.spelled && (after.text.endsWith('s') || after.text === 'feet');
  if (own.unit === unit.unit) return plural || isAlone(tokens, whole) ? own.next : undefined;
  if (unitRow(own.unit).dimension === unitRow(unit.unit).dimension) return undefined;
  return plural || unit.unit === 'in' ? next : undefined;
}

/** "Inch and a half inch", but not "lifts of an inch and a half inch", which may be two. */
function isAlone(tokens: Tokens, whole: Measured): boolean {
  const before = at(tokens, whole.start - 1).text;
  return readUnit(tokens, whole.start) !== undefined && before !== 'between' && before !== 'entre';
}
