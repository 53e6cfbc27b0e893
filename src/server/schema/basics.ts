import * as z from 'zod';
import { isUnit, type Unit, units } from '../../calc/units.ts';

/** A finite number: JSON knows no other, and neither may a reply. */
export const number = z.number();
export const text = z.string();
export const unit = z.enum(Object.keys(units).filter(isUnit) as [Unit, ...Unit[]]).meta({ id: 'Unit' });

/** A place in the question as it was sent, in UTF-16 positions. */
export const span = z.tuple([z.int().nonnegative(), z.int().nonnegative()]);

/** Fields of a fact that is a figure, and of one that is one of a few words. */
export const figure = { number, unit };
export const word = { choice: text };

/** The two shapes a fact can have, with the fields they share. */
export function fact<S extends z.ZodRawShape>(shared: S) {
  return z.union([z.strictObject({ ...shared, ...figure }), z.strictObject({ ...shared, ...word })]);
}

/** Any JSON value, so that what must be handed over as it came can be. */
export const anything = z.unknown();
