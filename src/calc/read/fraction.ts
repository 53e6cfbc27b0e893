import { at, type Token, type Tokens } from './lexer.ts';
import { denominators } from './number-words.ts';

/** A fraction in digits. */
export interface FractionRead {
  readonly number: number;
  readonly next: number;
  /** Set when it is one or more: 11/2 is likely 1 1/2 with its blank lost. */
  readonly unclear?: string;
}

/** The denominators read across blanks: `1 / 2 in`. */
const spacedDenominators = new Set([2, 4, 8, 16]);

/** n/d in digits with a denominator people write by hand; undefined for dates and sayings (12/25, 24/7). */
export function readFraction(tokens: Tokens, i: number): FractionRead | undefined {
  const over = at(tokens, i);
  const slash = at(tokens, i + 1);
  const under = at(tokens, i + 2);
  if (slash.text !== '/' || !plainWhole(over) || !plainWhole(under)) return undefined;
  if (over.value === 0 || !denominators.has(under.value)) return undefined;
  const proper = over.value < under.value;
  if (slash.gap || under.gap) {
    if (!(slash.gap && under.gap && proper && spacedDenominators.has(under.value))) return undefined;
  }
  const number = over.value / under.value;
  return proper ? { number, next: i + 3 } : { number, next: i + 3, unclear: `${over.raw}/${under.raw}` };
}

/** Digits alone: no point and no comma. */
export function plainWhole(token: Token): boolean {
  return token.style === 'whole' && !token.raw.includes(',');
}
