import type { Unit } from '../units.ts';
import { readCompound } from './compounds.ts';
import { at, type Tokens } from './lexer.ts';
import { countedWords, materials } from './near-words.ts';
import { type NumberOptions, type NumberRead, readNumber } from './numbers.ts';
import { readAndPart } from './parts.ts';
import { isUnitWord, readPer, readUnit, type UnitRead } from './unit.ts';
import { metricUnits } from './unit-words.ts';

/** A number with its unit, or bare, over the tokens from `start` up to `next`. */
export interface Measured {
  readonly start: number;
  readonly next: number;
  readonly number: number;
  readonly unit?: Unit;
  readonly unclear?: string;
  readonly form?: 'fraction' | 'spelled';
  readonly about?: true;
  /** 5 ft 6 in, read as one length. */
  readonly feetInches?: true;
}

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
  if (first.text === '$' || first.text === 'usd') return readMoney(tokens, i);
  if (first.text === '-' || first.text === '+') return readSigned(tokens, i, options);
  const counted = readNumber(tokens, i, options);
  if (!counted) return readUnitFirst(tokens, i);
  const unit = readUnit(tokens, counted.next);
  if (!unit) return measured(i, counted.next, counted, commaDoubt(counted, options));
  const number = counted.number * unit.times;
  const whole = withUnit(i, unit, { ...counted, number }, options);
  return readCompound(tokens, whole, unit, options) ?? withPart(tokens, whole, unit) ?? whole;
}

function measured(start: number, next: number, read: NumberRead, unclear: string | undefined): Measured {
  return {
    ...{ start, next, number: read.number },
    ...(unclear === undefined ? {} : { unclear }),
    ...(read.form ? { form: read.form } : {}),
    ...(read.about ? { about: read.about } : {}),
  };
}

function withUnit(start: number, unit: UnitRead, read: NumberRead, options: QuantityOptions): Measured {
  const metric = unit.spanish || unit.unit === 'm' || metricUnits.has(unit.unit);
  const unclear = unit.unclear ?? commaDoubt(read, { metric: metric || options.metric === true });
  return { ...measured(start, unit.next, read, unclear), unit: unit.unit };
}

/** `3,5` is a decimal for those who write metric or Spanish, and with a leading nought; for others it may be a list. */
function commaDoubt(read: NumberRead, options: QuantityOptions): string | undefined {
  const comma = read.unclear?.includes(',') && (options.metric || read.unclear.startsWith('0'));
  return comma ? undefined : read.unclear;
}

/** A sign counts when it stands off from what is before and touches the number. */
function readSigned(tokens: Tokens, i: number, options: QuantityOptions): Measured | undefined {
  const sign = at(tokens, i);
  if (options.afterFigure || !sign.gap || at(tokens, i + 1).gap || at(tokens, i + 1).kind !== 'number')
    return undefined;
  const read = readQuantity(tokens, i + 1, options);
  return read && { ...read, start: i, number: sign.text === '-' ? -read.number : read.number };
}

function readMoney(tokens: Tokens, i: number): Measured | undefined {
  if (at(tokens, i + 1).kind !== 'number') return undefined;
  const read = readNumber(tokens, i + 1);
  if (!read) return undefined;
  const price = readPer(tokens, read.next, 'USD');
  return { ...measured(i, price.next, read, price.unclear ?? read.unclear), unit: price.unit };
}

/** "An inch", "a ton of mix", "inch and a half": a unit that is its own number. */
function readUnitFirst(tokens: Tokens, i: number): Measured | undefined {
  const article = ['a', 'an', 'un', 'una'].includes(at(tokens, i).text);
  const start = article ? i + 1 : i;
  if (at(tokens, start).kind !== 'letters') return undefined;
  const unit = readUnit(tokens, start);
  if (!(unit?.spelled || unit?.alias === 'hr') || ['s', 'min', '%', 'degF', 'degC', 'USD'].includes(unit.unit))
    return readLabelled(tokens, i);
  const one: NumberRead = { number: unit.times, next: start, form: 'spelled' };
  const whole = withUnit(i, unit, one, {});
  const half = readAndPart(tokens, unit.next);
  if (half && !readUnit(tokens, half.next))
    return { ...whole, number: (1 + half.number) * unit.times, next: half.next };
  if (!article) return readLabelled(tokens, i);
  return isRate(tokens, i) || isIdiom(tokens, unit) ? undefined : whole;
}

/** "How many loads an hour", "20 tons a mile": a rate of something else, not one hour and one mile. */
function isRate(tokens: Tokens, i: number): boolean {
  const before = i > 0 ? at(tokens, i - 1) : undefined;
  if (!before) return false;
  if (before.kind === 'letters')
    return countedWords.has(before.text) || (before.text !== 'in' && isUnitWord(before.text));
  return before.kind === 'number' || ["'", '"', '#', '%'].includes(before.text);
}

/** "A ton of cracks" is many cracks. */
function isIdiom(tokens: Tokens, unit: UnitRead): boolean {
  if (unit.unit !== 'ton' || at(tokens, unit.next).text !== 'of') return false;
  return !materials.has(at(tokens, unit.next + 1).text);
}

/** "Toneladas: 20", "feet = 150": the unit named before its number. */
function readLabelled(tokens: Tokens, i: number): Measured | undefined {
  const unit = readUnit(tokens, i);
  if (!unit || at(tokens, i).text.length < 3) return undefined;
  const mark = at(tokens, unit.next).text;
  if (mark !== ':' && mark !== '=') return undefined;
  if (at(tokens, unit.next + 1).kind !== 'number') return undefined;
  const read = readNumber(tokens, unit.next + 1);
  if (!read || readUnit(tokens, read.next) || ['x', 'by', '*', ':'].includes(at(tokens, read.next).text))
    return undefined;
  const labelled = withUnit(i, unit, { ...read, number: read.number * unit.times }, {});
  return { ...labelled, next: read.next };
}

/** "2 inches and a half", "una pulgada y media". A part with a unit of its own is a figure of its own. */
function withPart(tokens: Tokens, whole: Measured, unit: UnitRead): Measured | undefined {
  if (!unit.spelled || !Number.isInteger(whole.number) || unit.times !== 1) return undefined;
  const part = readAndPart(tokens, unit.next);
  if (!part || readUnit(tokens, part.next)) return undefined;
  return { ...whole, number: whole.number + part.number, next: part.next };
}
