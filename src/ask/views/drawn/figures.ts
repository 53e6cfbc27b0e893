import { toBase } from '../../../calc/quantity.ts';
import type { Unit } from '../../../calc/units.ts';
import type { Reply } from '../../reply.ts';
import { asGiven } from '../names.ts';

/** A figure of a reply: its size in base units, and in words. */
export interface Drawable {
  readonly base: number;
  readonly text: string;
}

/** Every figure that a reply holds, by its quantity: worked out, given, kept from before, or assumed. */
export function figuresOf({ values, given, kept, assumed }: Reply): ReadonlyMap<string, Drawable> {
  const said = [...assumed, ...kept, ...given].flatMap((fact) =>
    'unit' in fact ? [[fact.quantity, drawable(fact.number, fact.unit)] as const] : [],
  );
  const found = values.map(
    ({ quantity, number, unit, text }) => [quantity, { base: toBase(number, unit), text }] as const,
  );
  return new Map([...said, ...found]);
}

const drawable = (number: number, unit: Unit): Drawable => ({
  base: toBase(number, unit),
  text: asGiven(number, unit),
});
