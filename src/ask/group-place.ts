import { toBase } from '../calc/quantity.ts';
import type { Figure } from '../calc/read/reading.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import { isPlausible } from './as-role.ts';

/** In 12 x 300 x 2 the longest is the length, the next the width, and a third the depth; the third stands last where it can. 1 in its place, -1 out of it, 0 where it cannot be told. */
export function placeInGroup(
  figure: Figure,
  all: readonly Figure[],
  { inGroup }: QuantityRecord,
  sides: readonly QuantityRecord[],
): -1 | 0 | 1 {
  if (figure.group === undefined) return 0;
  if (!inGroup) return -1;
  const size = (f: Figure): number => (f.unit ? toBase(f.number, f.unit) : f.number * 12);
  const group = all.filter((f) => f.group === figure.group);
  const last = group.length === 3 && isThin(group[2]!, group) ? group[2] : undefined;
  const sorted = group.filter((f) => f !== last).sort((a, b) => size(b) - size(a));
  const depth = sides.find((side) => side.inGroup === 'thinnest');
  if (group.length === 2 && isInThin(group[1]!) && depth && isPlausible(group[1]!, group[1]!.unit!, depth))
    return figure === group[1] ? (inGroup === 'thinnest' ? 1 : -1) : 0;
  const place = (last ? [...sorted, last] : sorted).indexOf(figure);
  return place === { longest: 0, next: 1, thinnest: 2 }[inGroup] ? 1 : -1;
}

/** True when the last of three can be the depth: in inches or millimetres, or the smallest, or a bare one that is no length of the other two. */
function isThin(last: Figure, group: readonly Figure[]): boolean {
  if (last.unit) return isInThin(last);
  return (
    group.every((f) => f === last || f.number >= last.number) ||
    group.some((f) => f !== last && !Number.isInteger(f.number) && f.number < last.number)
  );
}

/** True for a figure in a unit that depths are given in. */
const isInThin = ({ unit }: Figure): boolean => unit === 'in' || unit === 'mm' || unit === 'cm';
