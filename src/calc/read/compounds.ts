import { at, type Tokens } from './lexer.ts';
import type { Measured } from './measured.ts';
import { acrossWords, throughWords } from './near-words.ts';
import { readNumber } from './numbers.ts';
import type { QuantityOptions } from './quantity-options.ts';
import { endsThought } from './tokens.ts';
import { readUnit, type UnitRead } from './unit.ts';

/** Above so many feet, "150 ft 2 in" is a length and a thickness: nobody tapes a patch of road to the inch. */
const mostFeet = 30;
/** From this width up, and below this many inches, 12' 1" is a width and a thickness; 5' 6" is one length. */
const wideFeet = 8;
const thinInches = 4;

const joiners = new Set(['-', 'and', '&', 'y']);

/**
 * One measure in two units: 5 ft 6 in, 5'-6", 5'6, "5 foot 6", 1 hr 20. `whole` is the greater part, already read. A pair
 * set apart by a blank that looks like a width and a thickness is left two figures.
 */
export function readCompound(
  tokens: Tokens,
  whole: Measured,
  unit: UnitRead,
  options: QuantityOptions,
): Measured | undefined {
  const feet = whole.unit === 'ft' && unit.times === 1 && unit.unclear === undefined;
  if (!(feet || whole.unit === 'h') || !Number.isInteger(whole.number) || whole.number < 0) return undefined;
  const most = feet ? 12 : 60;
  const joined = joiners.has(at(tokens, unit.next).text);
  const start = joined ? unit.next + 1 : unit.next;
  const head = at(tokens, start);
  if (head.kind !== 'number' || head.style === 'comma' || head.value >= most) return undefined;
  const less = readNumber(tokens, start);
  if (!less || less.number >= most) return undefined;
  const lesser = readUnit(tokens, less.next);
  const glued = !head.gap;
  if (lesser) {
    if (lesser.unit !== (feet ? 'in' : 'min') || lesser.times !== 1) return undefined;
    if (feet && !glued && isTwo(tokens, whole.number, less.number, lesser, options)) return undefined;
  } else if (joined || !Number.isInteger(less.number) || !standsAlone(tokens, less.next, unit, glued)) {
    return undefined;
  }
  whole.next = lesser ? lesser.next : less.next;
  whole.number = feet ? whole.number + less.number / 12 : whole.number * 60 + less.number;
  whole.unit = feet ? 'ft' : 'min';
  whole.feetInches = feet;
  return whole;
}

/** Feet then inches that are a width or length and then a thickness. */
function isTwo(tokens: Tokens, feet: number, inches: number, lesser: UnitRead, options: QuantityOptions): boolean {
  if (options.afterFeet || feet > mostFeet) return true;
  if (feet >= wideFeet && inches > 0 && inches < thinInches) return true;
  return throughWords.has(at(tokens, lesser.next).text);
}

/** The lesser number without a unit: right after the mark (5'6), or "5 foot 6" with nothing else it could count. */
function standsAlone(tokens: Tokens, next: number, unit: UnitRead, glued: boolean): boolean {
  const after = at(tokens, next);
  if (glued && (after.kind !== 'letters' || after.gap || after.text === 'x')) return true;
  if (unit.unit === 'ft' && unit.alias !== 'foot') return false;
  return (
    endsThought(after) ||
    (unit.unit === 'ft' && (acrossWords.has(after.text) || after.text === 'x' || after.text === 'by'))
  );
}
