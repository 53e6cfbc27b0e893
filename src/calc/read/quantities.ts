import { readCompound } from './compounds.ts';
import { at, type Tokens } from './lexer.ts';
import { type Measured, measured, type NumberRead, numberRead } from './measured.ts';
import { countedWords, materials } from './near-words.ts';
import { type NumberOptions, readNumber } from './numbers.ts';
import { readAndPart } from './parts.ts';
import { metricUnits } from './rate-words.ts';
import { isArticle } from './tokens.ts';
import { readPer, readUnit, type UnitRead } from './unit.ts';
import { isUnitWord } from './unit-atoms.ts';

export interface QuantityOptions extends NumberOptions {
  /** The figure before this one stands next to it, or is a factor of the same group, and is in feet. */
  readonly afterFeet?: boolean;
  readonly metric?: boolean;
  /** A figure stands right before, so that a hyphen is no sign. */
  readonly afterFigure?: boolean;
}

/** The quantity that begins at token `i`: `-5 ft`, `$85 a ton`, `5'6"`, `1 hr 20`, `an inch and a half`, `12`. */
export function readQuantity(tokens: Tokens, i: number, options: QuantityOptions = {}): Measured | undefined {
  const first = at(tokens, i);
  if (first.kind === 'sign') {
    if (first.text === '$') return readMoney(tokens, i);
    return first.text === '-' || first.text === '+' ? readSigned(tokens, i, options) : undefined;
  }
  if (first.text === 'usd') return readMoney(tokens, i);
  const counted = readNumber(tokens, i, options);
  if (!counted) return readUnitFirst(tokens, i);
  const unit = readUnit(tokens, counted.next);
  if (!unit) return said(measured(i, counted.next, counted.number), counted, commaDoubt(counted, options.metric));
  const whole = withUnit(i, unit, counted, options.metric);
  return readCompound(tokens, whole, unit, options) ?? withPart(tokens, whole, unit) ?? whole;
}

function said(figure: Measured, read: NumberRead, unclear: string | undefined): Measured {
  figure.form = read.form;
  figure.about = read.about;
  figure.unclear = unclear;
  return figure;
}

function withUnit(start: number, unit: UnitRead, read: NumberRead, metric = false): Measured {
  const isMetric = metric || unit.spanish || unit.unit === 'm' || metricUnits.has(unit.unit);
  const figure = measured(start, unit.next, read.number * unit.times, unit.unit);
  return said(figure, read, unit.unclear ?? commaDoubt(read, isMetric));
}

/** `3,5` is a decimal for those who write metric or Spanish, and with a leading nought; for others it may be a list. */
function commaDoubt(read: NumberRead, metric = false): string | undefined {
  if (!read.unclear?.includes(',')) return read.unclear;
  return metric || read.unclear.startsWith('0') ? undefined : read.unclear;
}

/** A sign counts when it stands off from what is before and touches the number. */
function readSigned(tokens: Tokens, i: number, options: QuantityOptions): Measured | undefined {
  const sign = at(tokens, i);
  const number = at(tokens, i + 1);
  if (options.afterFigure || !sign.gap || number.gap || number.kind !== 'number') return undefined;
  const read = readQuantity(tokens, i + 1, options);
  if (!read) return undefined;
  read.start = i;
  if (sign.text === '-') read.number = -read.number;
  return read;
}

function readMoney(tokens: Tokens, i: number): Measured | undefined {
  if (at(tokens, i + 1).kind !== 'number') return undefined;
  const read = readNumber(tokens, i + 1);
  if (!read) return undefined;
  const price = readPer(tokens, read.next, 'USD');
  return said(measured(i, price.next, read.number, price.unit), read, price.unclear ?? read.unclear);
}

/** Units nobody means one of: "wait a minute", "give me a second", "a degree of care". */
const notAlone: ReadonlySet<string> = new Set(['s', 'min', '%', 'degF', 'degC', 'USD']);

/** "An inch", "a ton of mix", "inch and a half": a unit that is its own number. */
function readUnitFirst(tokens: Tokens, i: number): Measured | undefined {
  const article = isArticle(at(tokens, i));
  const start = article ? i + 1 : i;
  const word = at(tokens, start);
  if (word.kind !== 'letters' || word.text.length < 2) return undefined;
  const unit = readUnit(tokens, start);
  if (!unit) return undefined;
  if (!(unit.spelled || unit.alias === 'hr') || notAlone.has(unit.unit)) return readLabelled(tokens, i, unit);
  const whole = withUnit(i, unit, numberRead(1, start, 'spelled'));
  const half = readAndPart(tokens, unit.next);
  if (half && !readUnit(tokens, half.next)) {
    whole.number = (1 + half.number) * unit.times;
    whole.next = half.next;
    return whole;
  }
  if (!article) return readLabelled(tokens, i, unit);
  return isRate(tokens, i, unit) || isIdiom(tokens, unit) ? undefined : whole;
}

const unitMarks = new Set(["'", '"', '#', '%']);

/** "How many loads an hour", "20 tons a mile": a rate of something else, not one hour and one mile. */
function isRate(tokens: Tokens, i: number, unit: UnitRead): boolean {
  if (i === 0) return false;
  const before = at(tokens, i - 1);
  if (before.kind === 'letters') {
    if (ofRates.has(unit.unit) && isCounted(tokens, i - 1)) return true;
    return countedWords.has(before.text) || (before.text !== 'in' && isUnitWord(before.text));
  }
  return before.kind === 'number' || unitMarks.has(before.text);
}

const ofRates: ReadonlySet<string> = new Set(['h', 'mi', 'ton']);

/** "200 cars", "how many patches": things counted, before an hour or a mile. */
function isCounted(tokens: Tokens, i: number): boolean {
  const number = at(tokens, i - 1);
  return at(tokens, i).text.endsWith('s') && (number.kind === 'number' || number.text === 'many');
}

/** "A ton of cracks" is many cracks. */
function isIdiom(tokens: Tokens, unit: UnitRead): boolean {
  if (unit.unit !== 'ton' || at(tokens, unit.next).text !== 'of') return false;
  return !materials.has(at(tokens, unit.next + 1).text);
}

const notLabelled = new Set(['x', 'by', '*', ':']);

/** "Toneladas: 20", "feet = 150": the unit named before its number. */
function readLabelled(tokens: Tokens, i: number, unit: UnitRead): Measured | undefined {
  const mark = at(tokens, unit.next).text;
  if ((mark !== ':' && mark !== '=') || at(tokens, i).text.length < 3 || unit.alias === 'min') return undefined;
  if (at(tokens, unit.next + 1).kind !== 'number') return undefined;
  const read = readNumber(tokens, unit.next + 1);
  if (!read || readUnit(tokens, read.next) || notLabelled.has(at(tokens, read.next).text)) return undefined;
  const figure = withUnit(i, unit, read);
  figure.next = read.next;
  return figure;
}

/** "2 inches and a half", "una pulgada y media". A part with a unit of its own is a figure of its own. */
function withPart(tokens: Tokens, whole: Measured, unit: UnitRead): Measured | undefined {
  if (!unit.spelled || !Number.isInteger(whole.number) || unit.times !== 1) return undefined;
  const part = readAndPart(tokens, unit.next);
  if (!part || readUnit(tokens, part.next)) return undefined;
  whole.number += part.number;
  whole.next = part.next;
  return whole;
}
