import { at, type Tokens } from './lexer.ts';

const letters = new Set(['l', 'w', 'd', 'h']);
const joins = new Set(['x', 'by', '*']);

/** True when the letter at token `i`, after a number, names a side of a size: 150L x 12W x 2D. No litres there, no hours. */
export function isDimensionLetter(tokens: Tokens, i: number): boolean {
  if (!letters.has(at(tokens, i).text) || at(tokens, i + 1).text === '/') return false;
  if (joins.has(at(tokens, i + 1).text)) return true;
  const number = at(tokens, i - 1).kind === 'number' ? i - 1 : i - 2; // past the mark of 2"D
  return joins.has(at(tokens, number - 1).text);
}
