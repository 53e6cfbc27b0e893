import { at, type Tokens } from './lexer.ts';
import { lengthWords, placeWords } from './near-words.ts';
import { numberWords } from './number-words.ts';
import { endsThought } from './tokens.ts';

/** The most that "in" before a length is taken for in inches: 24 in 180 ft is 24 of something. */
const mostInches = 12;

/**
 * True when the `in` at token `i`, which follows a number, is an inch and not the preposition. It is one unless a number,
 * an article or a noun of time or place follows; before a length ("2 in 12 ft", "2 in 300 x 12") it is one again.
 */
export function isInch(tokens: Tokens, i: number): boolean {
  const word = at(tokens, i);
  const next = at(tokens, i + 1);
  if (!word.gap || (next.text === '.' && !next.gap)) return true;
  if (next.kind === 'number') return at(tokens, i - 1).value <= mostInches && beforeLength(tokens, i + 1);
  if (next.text === 'each') return at(tokens, i + 2).kind !== 'letters';
  if (next.text === 'at') return !endsAfterNumber(tokens, i + 2);
  return next.kind !== 'letters' || !(placeWords.has(next.text) || numberWords.has(next.text));
}

function beforeLength(tokens: Tokens, i: number): boolean {
  const slash = at(tokens, i + 1).text === '/' && at(tokens, i + 2).kind === 'number';
  const after = at(tokens, slash ? i + 3 : i + 1);
  return after.text === "'" || after.text === '*' || lengthWords.has(after.text);
}

/** "Put 2 in at 9": a bare number that ends the thought. */
function endsAfterNumber(tokens: Tokens, i: number): boolean {
  if (at(tokens, i).kind !== 'number') return false;
  return endsThought(at(tokens, i + 1));
}
