import { at, type Tokens } from './lexer.ts';
import { readQuantity } from './quantities.ts';
import type { Reach } from './ranges.ts';

/** Which part of ten degrees: low 40s is 40 to 43. */
const shares: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['low', [0, 3]],
  ['lower', [0, 3]],
  ['mid', [4, 6]],
  ['middle', [4, 6]],
  ['upper', [7, 9]],
  ['high', [7, 9]],
]);

/** "Low 40s", "in the 50s", "5 below", "minus 5 degrees": temperatures with no degree sign. They are taken for degF, and marked unclear. */
export function readTemperature(tokens: Tokens, i: number): Reach | undefined {
  const first = at(tokens, i);
  if (first.kind === 'number')
    return readBelow(tokens, i) ?? (inThe(tokens, i) ? decade(tokens, i, i, [0, 9]) : undefined);
  if (first.text === 'minus' || first.text === 'negative') return readMinus(tokens, i);
  const share = shares.get(first.text);
  if (!share) return undefined;
  const hyphen = at(tokens, i + 1).text === '-' ? 1 : 0;
  return decade(tokens, i, i + 1 + hyphen, share);
}

function inThe(tokens: Tokens, i: number): boolean {
  return at(tokens, i - 1).text === 'the' && at(tokens, i - 2).text === 'in';
}

function decade(tokens: Tokens, start: number, i: number, share: readonly [number, number]): Reach | undefined {
  const tens = at(tokens, i);
  let s = i + 1;
  if (at(tokens, s).text === "'") s++;
  if (
    tens.style !== 'whole' ||
    tens.raw.length !== 2 ||
    !tens.raw.endsWith('0') ||
    at(tokens, s).raw !== 's' ||
    at(tokens, s).gap
  ) {
    return undefined;
  }
  const [low, high] = [tens.value + share[0], tens.value + share[1]];
  return { start, next: s + 1, number: (low + high) / 2, low, high, unit: 'degF', unclear: 'deg', about: true };
}

function readMinus(tokens: Tokens, i: number): Reach | undefined {
  const read = readQuantity(tokens, i + 1);
  const warm = read?.unit === 'degF' || read?.unit === 'degC';
  return read && warm ? { ...read, start: i, number: -read.number } : undefined;
}

/** "5 below" and "5 below zero", with nothing after that it could be below of. */
function readBelow(tokens: Tokens, i: number): Reach | undefined {
  if (at(tokens, i + 1).text !== 'below' || at(tokens, i).style !== 'whole') return undefined;
  const after = at(tokens, i + 2);
  const zero = after.text === 'zero' || after.text === '0';
  const ends =
    after.kind === 'end' ||
    ['.', ',', '?', '!', ';', '\n'].includes(after.text) ||
    ['outside', 'out', 'today', 'and'].includes(after.text);
  if (!zero && !ends) return undefined;
  return { start: i, next: zero ? i + 3 : i + 2, number: -at(tokens, i).value, unit: 'degF', unclear: 'deg' };
}
