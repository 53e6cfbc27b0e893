import { at, type Tokens } from './lexer.ts';
import { liftWords, throughWords, uncountedInch } from './near-words.ts';
import { readAndPart } from './parts.ts';
import type { Side } from './quantity-options.ts';
import { afterHyphen, isArticle } from './tokens.ts';
import { isUnitWord } from './unit-atoms.ts';

/** From this many inches up, a side of a size is not meant in inches when "inch" in the singular follows it. */
const mostInches = 24;
/** After two sides "30 inch deep" is a depth; from here up it is a third factor even there: 2 x 12 x 300 inch deep. */
const mostDug = 48;
/** A second side up to so many inches may be the depth itself: 12 x 2 inch deep; and up to so many before "and a half". */
const mostDeep = 6;
const mostDeepWithPart = 3;
/** From here up, "20 ft x 12 inch and a half" is a length and 1 1/2 in. */
const leastLong = 12;

const singular = new Set(['inch', 'pulgada']);

/**
 * True when the "inch" at token `i` is one inch of depth and no unit of the `number` before it: 24 by 180 INCH DEEP,
 * 10x20 INCH AND A HALF. Only beside another side of a size; "12 inch deep" and "10 x 20 x 2 inch deep" are their own.
 */
export function isOneInch(tokens: Tokens, i: number, number: number, side: Side | undefined): boolean {
  const word = at(tokens, i);
  if (!word.gap || !singular.has(word.text)) return false;
  const part = readAndPart(tokens, i + 1) !== undefined;
  if (!side) return part && number >= mostInches;
  if (!part && !throughWords.has(at(tokens, afterHyphen(tokens, i + 1)).text)) return false;
  if (side.count > 1) return side.bare && number > side.number && number >= (part ? leastLong : mostDug);
  if (number >= mostInches) return true;
  if (!side.joined) return false;
  if (!side.bare) return part && number >= leastLong;
  return number > (part ? mostDeepWithPart : mostDeep);
}

/**
 * True when the unit word at token `word`, with no number before it, is one inch: 12 wide 300 long INCH DEEP, at INCH
 * THICK. Its article, or else the word itself, is at token `i`; `after` tells that a figure stands right before that.
 */
export function isInchDeep(tokens: Tokens, i: number, word: number, after: boolean): boolean {
  if (!singular.has(at(tokens, word).text)) return false;
  const next = at(tokens, afterHyphen(tokens, word + 1));
  if (next.kind !== 'letters' || !liftWords.has(next.text)) return false;
  if (i === 0 || after) return true;
  const before = at(tokens, i - 1);
  if (before.kind === 'sign') return before.text !== '/' && at(tokens, i).gap;
  return !isArticle(before) && !uncountedInch.has(before.text) && !isUnitWord(before.text);
}
