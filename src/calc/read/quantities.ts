import { readCompound } from './compounds.ts';
import { at, type Tokens } from './lexer.ts';
import { type Measured, measured } from './measured.ts';
import { readNumber } from './numbers.ts';
import { isOneInch } from './one-inch.ts';
import type { QuantityOptions } from './quantity-options.ts';
import { readPer, readUnit } from './unit.ts';
import { readUnitFirst } from './unit-first.ts';
import { addPart } from './unit-parts.ts';
import { commaDoubt, said, withUnit } from './with-unit.ts';

/** The quantity that begins at token `i`: `-5 ft`, `$85 a ton`, `5'6"`, `1 hr 20`, `an inch and a half`, `12`. */
export function readQuantity(tokens: Tokens, i: number, options: QuantityOptions = {}): Measured | undefined {
  const first = at(tokens, i);
  if (first.kind === 'sign') {
    if (first.text === '$') return readMoney(tokens, i);
    return first.text === '-' || first.text === '+' ? readSigned(tokens, i, options) : undefined;
  }
  if (first.text === 'usd') return readMoney(tokens, i);
  const counted = readNumber(tokens, i, options);
  if (!counted) return readUnitFirst(tokens, i, options.afterFigure);
  const inchApart = isOneInch(tokens, counted.next, counted.number, options.side);
  const unit = inchApart ? undefined : readUnit(tokens, counted.next);
  if (!unit) return said(measured(i, counted.next, counted.number), counted, commaDoubt(counted, options.metric));
  const whole = withUnit(i, unit, counted, options.metric);
  const compound = readCompound(tokens, whole, unit, options);
  if (compound) return compound;
  if (Number.isInteger(whole.number) && unit.times === 1) addPart(tokens, whole, unit);
  return whole;
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
