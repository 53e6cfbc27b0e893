import { hedgesBefore } from './bound-words.ts';
import { at, type Tokens } from './lexer.ts';
import { nameStarts } from './names.ts';
import { placeStarts } from './places.ts';
import { spelledStarts } from './spelled.ts';
import { temperatureStarts } from './temperatures.ts';
import { unitStarts } from './unit-atoms.ts';

/** Every word that can begin anything but a word. Made of the tables themselves, so that none can be left out. */
const words = new Set([
  ...placeStarts,
  ...temperatureStarts,
  ...nameStarts,
  ...spelledStarts,
  ...unitStarts,
  ...hedgesBefore.keys(),
  ...['between', 'entre', 'usd'],
]);
const signs = new Set(['#', '$', '-', '+', '~', '<', '>', '=']);

/** False for the many tokens that are plainly words: nothing else can begin there. */
export function starts(tokens: Tokens, i: number): boolean {
  const token = at(tokens, i);
  if (token.kind === 'number') return true;
  if (token.kind === 'sign') return signs.has(token.text);
  if (words.has(token.text)) return true;
  const next = at(tokens, i + 1);
  return !next.gap && (next.kind === 'number' || next.text === '-');
}
