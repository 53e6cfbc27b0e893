import fc from 'fast-check';
import { units } from '../../src/calc/units.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { hostile } from './typed.ts';

/** Values that stand where none of them belongs. */
const values: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    true,
    false,
    '',
    ' ',
    0,
    -0,
    -1,
    1e308,
    -1e308,
    5e-324,
    2 ** 53,
    [],
    {},
    [[]],
    [null],
    '1',
    'in',
    '__proto__',
  ),
  fc.constantFrom<unknown>(
    { number: 1, unit: 'in' },
    { number: -1, unit: 'degF' },
    { number: 1e308, unit: 'mi' },
    { number: 0, unit: 'ton' },
    { min: { number: 1, unit: 'in' } },
  ),
  fc.constantFrom(...hostile),
  fc.constantFrom(...knowledge.quantities.keys()),
  fc.constantFrom(...Object.keys(units)),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.jsonValue({ maxDepth: 3 }),
);
const keys = fc.oneof(
  fc.constantFrom(
    '__proto__',
    'constructor',
    'toString',
    '',
    'number',
    'unit',
    'min',
    'max',
    'note',
    'limits',
    'defaults',
    'over',
    'set',
  ),
  fc.constantFrom(...knowledge.quantities.keys()),
  fc.constantFrom(...knowledge.limits.keys()),
);

interface Edit {
  readonly at: number;
  readonly how: number;
  readonly key: string;
  readonly value: unknown;
}

/** A copy of a value with a few of its parts replaced, left out, said under another name, or put into a list. */
export function bent(base: unknown): fc.Arbitrary<unknown> {
  const edit: fc.Arbitrary<Edit> = fc.record({
    at: fc.nat({ max: 10_000 }),
    how: fc.nat({ max: 4 }),
    key: keys,
    value: values,
  });
  return fc.array(edit, { maxLength: 4 }).map((edits) => {
    let root = structuredClone(base);
    for (const { at, how, key, value } of edits) {
      const places = placesIn(root);
      const place = places[at % Math.max(1, places.length)];
      if (!place) root = value;
      else change(place.holder as Record<string, unknown>, place.key, how, key, value);
    }
    // As it comes over the wire, where a list has no holes.
    return JSON.parse(JSON.stringify(root) ?? 'null') as unknown;
  });
}

function change(holder: Record<string, unknown>, key: string, how: number, name: string, value: unknown): void {
  const had = holder[key];
  const put = (under: string, what: unknown): void => {
    Object.defineProperty(holder, under, {
      value: structuredClone(what),
      enumerable: true,
      configurable: true,
      writable: true,
    });
  };
  if (how === 0) delete holder[key];
  else if (how === 1) put(key, [had, had]);
  else if (how === 2) put(name, had);
  else put(key, value);
}

function placesIn(value: unknown): { holder: object; key: string }[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.keys(value).flatMap((key) => [
    { holder: value, key },
    ...placesIn((value as Record<string, unknown>)[key]),
  ]);
}
