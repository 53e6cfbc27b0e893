import { plainWhole, readFraction } from './fraction.ts';
import { at, type Tokens } from './lexer.ts';
import { type NumberRead, numberRead } from './measured.ts';
import { denominators } from './number-words.ts';
import { readAndPart, readPartsOf, skipOfA } from './parts.ts';
import { metricUnits } from './rate-words.ts';
import { readSpelled } from './spelled.ts';
import { readUnit } from './unit.ts';
import { isSpanishUnit } from './unit-atoms.ts';

/** Above this, `150 3/4"` is a length and a thickness, not 150 3/4 inches. */
const mostMixedInches = 36;

export interface NumberOptions {
  /** After a bare factor (12 x 150 3/4"): a fraction set off by a blank and followed by an inch is a figure of its own. */
  readonly afterBareFactor?: boolean;
}

/** The number that begins at token `i`, in digits or in words. Undefined when none does. */
export function readNumber(tokens: Tokens, i: number, options: NumberOptions = {}): NumberRead | undefined {
  const first = at(tokens, i);
  if (first.kind === 'letters') return withAnd(tokens, readSpelled(tokens, i), options);
  if (first.kind !== 'number' || first.style === 'odd') return undefined;
  const dotted = readDotted(tokens, i);
  if (dotted) return dotted;
  const fraction = readFraction(tokens, i);
  if (fraction) {
    const next = fraction.number < 1 ? skipOfA(tokens, fraction.next) : fraction.next;
    return numberRead(fraction.number, next, 'fraction', fraction.unclear);
  }
  const part = first.value < 1 && at(tokens, i + 1).text === 'of' ? skipOfA(tokens, i + 1) : i + 1; // .3 of a mile
  const comma = first.style === 'comma';
  const plain = numberRead(first.value, part, undefined, comma ? first.raw : undefined);
  if (comma) return plain;
  if (!plainWhole(first)) return multiplied(tokens, plain);
  return (
    readMixed(tokens, i, options) ??
    readPartsOf(tokens, i + 1, first.value) ??
    readSpaced(tokens, i) ??
    multiplied(tokens, withAnd(tokens, plain, options)!)
  );
}

/** `1 1/2`, `1-1/2`, `1 - 1/2`, `1 + 1/2`. */
function readMixed(tokens: Tokens, i: number, options: NumberOptions): NumberRead | undefined {
  const hyphen = at(tokens, i + 1).text === '-' || at(tokens, i + 1).text === '+';
  const start = hyphen ? i + 2 : i + 1;
  const fraction = readFraction(tokens, start);
  if (!fraction || fraction.number >= 1) return undefined;
  if (hyphen && at(tokens, i + 1).gap !== at(tokens, start).gap) return undefined;
  const whole = at(tokens, i).value;
  if (!hyphen && standsApart(tokens, fraction.next, whole, options)) return undefined;
  return numberRead(whole + fraction.number, fraction.next, 'fraction');
}

function standsApart(tokens: Tokens, next: number, whole: number, options: NumberOptions): boolean {
  if (!options.afterBareFactor && whole <= mostMixedInches) return false;
  return readUnit(tokens, next)?.unit === 'in';
}

/** `1.1/2` and `1,1/2`: mixed numbers typed with a point or a comma; the comma may part a list. */
function readDotted(tokens: Tokens, i: number): NumberRead | undefined {
  const { raw, style, value } = at(tokens, i);
  const slash = at(tokens, i + 1);
  const under = at(tokens, i + 2);
  if ((style !== 'decimal' && style !== 'comma') || slash.text !== '/' || slash.gap || under.gap) return undefined;
  const over = Number(raw.slice(Math.max(raw.lastIndexOf('.'), raw.lastIndexOf(',')) + 1));
  if (raw[0] === '.' || !plainWhole(under) || !denominators.has(under.value)) return undefined;
  if (over === 0 || over >= under.value) return undefined;
  const unclear = style === 'comma' ? `${raw}/${under.raw}` : undefined;
  return numberRead(Math.trunc(value) + over / under.value, i + 3, 'fraction', unclear);
}

/** `1 200 m`: thousands set off by blanks, read so only before a metric unit. */
function readSpaced(tokens: Tokens, i: number): NumberRead | undefined {
  const first = at(tokens, i);
  if (first.raw.length > 3 || first.raw[0] === '0') return undefined;
  let digits = first.raw;
  let next = i + 1;
  while (next < i + 4 && at(tokens, next).gap && at(tokens, next).raw.length === 3 && plainWhole(at(tokens, next))) {
    digits += at(tokens, next++).raw;
  }
  if (next === i + 1) return undefined;
  const unit = readUnit(tokens, next)?.unit;
  return unit !== undefined && (unit === 'm' || metricUnits.has(unit)) ? numberRead(Number(digits), next) : undefined;
}

/** Two AND A HALF, 3 and 5/8. */
function withAnd(tokens: Tokens, read: NumberRead | undefined, options: NumberOptions): NumberRead | undefined {
  if (!read || !Number.isInteger(read.number) || read.about) return read;
  const part = readAndPart(tokens, read.next);
  if (!part || standsApart(tokens, part.next, read.number, options)) return read;
  return numberRead(read.number + part.number, part.next, read.form ?? 'fraction');
}

/** 24k, 2 thousand, 3 hundred, 2 dozen; `2 mil libras` only in Spanish. */
function multiplied(tokens: Tokens, read: NumberRead): NumberRead {
  const word = at(tokens, read.next);
  const by = (times: number) => numberRead(read.number * times, read.next + 1, read.form, read.unclear);
  switch (word.text) {
    case 'k':
      return !word.gap && (word.raw === 'k' || readUnit(tokens, read.next + 1)) ? by(1000) : read;
    case 'thousand':
      return by(1000);
    case 'hundred':
      return by(100);
    case 'dozen':
      return by(12);
    case 'mil':
      return isSpanishUnit(at(tokens, read.next + 1).text) ? by(1000) : read;
    default:
      return read;
  }
}
