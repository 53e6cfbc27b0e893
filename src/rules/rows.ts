import type { Dimension } from '../calc/dimension.ts';
import type { LookupTable } from '../calc/expression.ts';
import { toBase } from '../calc/quantity.ts';
import type { FigureTable } from './shapes.ts';

/** A table record as an expression can look it up: in base units. */
export function rowsOf<D extends Dimension, V extends Dimension>(record: FigureTable<D, V>): LookupTable {
  return {
    id: record.id,
    key: record.key.dimension,
    value: record.value.dimension,
    rows: record.rows.map(([key, value]) => [toBase(key, record.key.unit), toBase(value, record.value.unit)] as const),
  };
}
