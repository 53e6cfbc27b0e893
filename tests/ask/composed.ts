import fc from 'fast-check';
import type { Asking } from './askings.ts';

/** A question put together, with the answer it should have. */
export interface Composed {
  readonly question: string;
  readonly wanted: number;
}

/** Questions of one kind: every fact in one of its spellings, told by one of its role words, in any order. */
export function questionsOf({ asks, facts, sum }: Asking): fc.Arbitrary<Composed> {
  const told = Object.entries(facts).map(([name, { figure, roles }]) =>
    fc
      .record({ figure, role: fc.constantFrom(...roles) })
      .map(({ figure, role }): Part => ({ name, value: figure.value, text: role.replace('#', figure.text) })),
  );
  const places = fc.array(fc.nat({ max: 1000 }), { minLength: told.length, maxLength: told.length });
  const comma = fc.constantFrom(', ', ' , ', '; ', ' and ');
  return fc
    .tuple(
      fc.constantFrom(...asks),
      fc.tuple(...told),
      fc.boolean(),
      comma,
      places,
      fc.option(fc.constantFrom(...sizes)),
    )
    .map(([ask, parts, askFirst, comma, places, size]) => {
      const texts = bySize(parts, size).map(({ text }, i) => ({ text, at: places[i]! }));
      const said = texts
        .sort((a, b) => a.at - b.at)
        .map(({ text }) => text)
        .join(comma);
      const wanted = sum(Object.fromEntries(parts.map(({ name, value }) => [name, value])));
      return { question: askFirst ? `${ask}, ${said}` : `${said}, ${ask}`, wanted };
    })
    .filter(({ question }) => !joined.test(question));
}

interface Part {
  readonly name: string;
  readonly value: number;
  readonly text: string;
}

/** The size of a patch in one piece: the longer is the length, in either order. */
const sizes = [
  'L x W ft',
  'W x L ft',
  'L ft by W ft',
  "L' x W'",
  'W ft wide by L ft',
  'LxW ft',
  'L × W ft',
  'L by W feet',
  'L x W',
] as const;

const metric = /\d (?:mm|cm|m|metres|meters)\b/;
/** "6 ft and 3 in deep" may be one figure of feet and inches, so it is not put that way. */
const joined = /(?:ft\.?|feet|foot|['′]) and (?:depth )?[^,;]{0,12}(?:"|”|in|inch|inches)\b/;

/** Length and width as one size, in place of each with its own words. */
function bySize(parts: readonly Part[], size: (typeof sizes)[number] | null): readonly Part[] {
  const [long, wide] = ['length', 'width'].map((name) => parts.find((part) => part.name === name));
  if (!size || !long || !wide) return parts;
  const rest = parts.filter((part) => part !== long && part !== wide);
  // A size without a unit goes by the units of the rest, so these must then be feet and inches.
  if (size === 'L x W' && rest.some((part) => metric.test(part.text))) return parts;
  return [
    { name: 'size', value: 0, text: size.replace('L', String(long.value)).replace('W', String(wide.value)) },
    ...rest,
  ];
}
