import { at, type Tokens } from './lexer.ts';
import { type Measured, measured } from './measured.ts';
import { readQuantity } from './quantities.ts';
import { endsThought } from './tokens.ts';

/** Which part of ten degrees: low 40s is 40 to 43. */
const shares: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['low', [0, 3]],
  ['lower', [0, 3]],
  ['mid', [4, 6]],
  ['middle', [4, 6]],
  ['upper', [7, 9]],
  ['high', [7, 9]],
]);

/** Words a temperature can begin with. */
export const temperatureStarts: readonly string[] = [...shares.keys(), 'minus', 'negative'];

/** "Low 40s", "in the 50s", "5 below", "minus 5 degrees": temperatures with no degree sign. They are taken for degF, and marked unclear. */
export function readTemperature(tokens: Tokens, i: number): Measured | undefined {
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

function decade(tokens: Tokens, start: number, i: number, share: readonly [number, number]): Measured | undefined {
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
  const range = measured(start, s + 1, (low + high) / 2, 'degF', 'deg');
  range.low = low;
  range.high = high;
  range.about = true;
  return range;
}

function readMinus(tokens: Tokens, i: number): Measured | undefined {
  const read = readQuantity(tokens, i + 1);
  const warm = read?.unit === 'degF' || read?.unit === 'degC';
  if (!read || !warm) return undefined;
  read.start = i;
  read.number = -read.number;
  return read;
}

const outside = new Set(['outside', 'out', 'today', 'and']);

/** "5 below" and "5 below zero", with nothing after that it could be below of. */
function readBelow(tokens: Tokens, i: number): Measured | undefined {
  if (at(tokens, i + 1).text !== 'below' || at(tokens, i).style !== 'whole') return undefined;
  const after = at(tokens, i + 2);
  const zero = after.text === 'zero' || after.text === '0';
  const ends = endsThought(after) || outside.has(after.text);
  if (!zero && !ends) return undefined;
  return measured(i, zero ? i + 3 : i + 2, -at(tokens, i).value, 'degF', 'deg');
}
