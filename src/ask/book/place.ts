import { toBase } from '../../calc/quantity.ts';
import { read } from '../../calc/read/read.ts';

/** Where a place on the road lies, in inches from where its stationing begins: `12+50`, `sta 12+50`, `km 1+200`, `MP 12.3`. Undefined when it is written otherwise. */
export function placeOf(text: string): number | undefined {
  const bare = /^\s*\d{1,4}(?:\.\d{1,3})?\s*$/.test(text) ? `MP ${text}` : text;
  const zero = /\+\d{3}(?!\d)/.test(text) ? '0+000' : text.includes('+') ? '0+00' : 'MP 0';
  return stretch(bare, zero);
}

/** The length between two places, in inches; undefined when one is written otherwise than the other, or not as a place. */
export function stretch(from: string, to: string): number | undefined {
  const [first, ...others] = read(`${from} to ${to}`).filter(({ kind }) => kind === 'figure');
  if (first?.kind !== 'figure' || others.length > 0 || !first.unit) return undefined;
  return first.form === 'station-span' || first.form === 'milepost-span' ? toBase(first.number, first.unit) : undefined;
}
