import fc from 'fast-check';

/** A figure in the unit its formula takes, and one of the ways people write it. */
export interface Spelled {
  readonly value: number;
  readonly text: string;
}

const spelledAs = (value: number, texts: readonly string[]): fc.Arbitrary<Spelled> =>
  fc.constantFrom(...texts).map((text) => ({ value, text }));

const between = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });

/** Decimals without float dust: 0.3048 m to the foot, 25.4 mm to the inch. */
const exact = (x: number): string => String(Number(x.toFixed(6)));

const grouped = (n: number): string => n.toLocaleString('en-US');

/** Feet, a whole number of them, in feet, yards or metres. */
export const feet = (min: number, max: number): fc.Arbitrary<Spelled> =>
  between(min, max).chain((n) =>
    spelledAs(n, [
      ...[
        `${n} ft`,
        `${n} feet`,
        `${n}ft`,
        `${n}'`,
        `${n} ft.`,
        `${n} foot`,
        `${n}.0 ft`,
        `${n}′`,
        `${grouped(n)} feet`,
      ],
      ...(n % 3 === 0 ? [`${n / 3} yd`, `${n / 3} yards`] : []),
      // A bare "m" among feet could be a mile or a minute, and is asked back.
      ...[`${exact(n * 0.3048)} metres`, `${exact(n * 0.3048)} meters`],
    ]),
  );

const vulgar: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};
const lowest = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
const said: Readonly<Record<string, string>> = { '1/2': 'a half', '1/4': 'a quarter' };

/** Every way of writing so many eighths of an inch. */
export function inchesIn(eighths: number): string[] {
  const [whole, fraction] = [Math.floor(eighths / 8), lowest[eighths % 8]!];
  const decimal = String(eighths / 8);
  const mixed = fraction ? [whole ? `${whole} ${fraction}` : fraction, ...(whole ? [`${whole}-${fraction}`] : [])] : [];
  const sign = fraction ? [`${whole || ''}${vulgar[fraction]}`] : [];
  const numbers = [decimal, ...mixed, ...sign];
  const words =
    whole === 1 && said[fraction]
      ? [`inch and ${said[fraction]}`, `an inch and ${said[fraction]}`, `one and ${said[fraction]} inches`]
      : [];
  return [
    ...numbers.flatMap((n) => [`${n} in`, `${n}"`, `${n} inches`, `${n} inch`, `${n}in`, `${n}”`]),
    ...words,
    `${exact((eighths * 25.4) / 8)} mm`,
    `${exact((eighths * 2.54) / 8)} cm`,
  ];
}

/** Inches in eighths. */
export const inches = (minEighths: number, maxEighths: number): fc.Arbitrary<Spelled> =>
  between(minEighths, maxEighths).chain((n) => spelledAs(n / 8, inchesIn(n)));

/** Short tons, whole ones, never in a unit that would change the answer's. */
export const tons = (min: number, max: number): fc.Arbitrary<Spelled> =>
  between(min, max).chain((n) => spelledAs(n, [`${n} ton`, `${n} tons`, `${n} short tons`, `${n}.0 tons`, `${n}T`]));

/** A spray rate in hundredths of a gallon a square yard. */
export const rates = (min: number, max: number): fc.Arbitrary<Spelled> =>
  between(min, max).chain((n) => {
    const decimals = [String(n / 100), (n / 100).toFixed(2), String(n / 100).replace('0.', '.')];
    return spelledAs(
      n / 100,
      decimals.flatMap((x) => [`${x} gal/sy`, `${x} gal/yd2`, `${x} gal per sq yd`, `${x} gallons per square yard`]),
    );
  });

export const gallons = (min: number, max: number): fc.Arbitrary<Spelled> =>
  between(min, max).chain((n) => spelledAs(n, [`${n} gal`, `${n} gallons`, `${n} gallon`, `${grouped(n)} gal`]));

export const gallonsAMinute = (min: number, max: number): fc.Arbitrary<Spelled> =>
  between(min, max).chain((n) =>
    spelledAs(n, [`${n} gpm`, `${n} gal/min`, `${n} gallons a minute`, `${n} gallons per minute`]),
  );

/** Speeds as posted, in fives. */
export const milesAnHour = (min: number, max: number): fc.Arbitrary<Spelled> =>
  between(min / 5, max / 5).chain((n) =>
    spelledAs(n * 5, [`${n * 5} mph`, `${n * 5}mph`, `${n * 5} MPH`, `${n * 5} miles per hour`]),
  );

/** Whole numbers of what the role names. */
export const counts = (min: number, max: number): fc.Arbitrary<Spelled> =>
  between(min, max).chain((n) => spelledAs(n, [`${n}`]));

export const minutes = (min: number, max: number): fc.Arbitrary<Spelled> =>
  between(min, max).chain((n) => spelledAs(n, [`${n} min`, `${n} minutes`]));

export const dollars = (min: number, max: number): fc.Arbitrary<Spelled> =>
  between(min, max).chain((n) => spelledAs(n, [`$${n} a ton`, `${n} dollars a ton`, `$${n}/ton`, `$${n} per ton`]));

export const percent = (min: number, max: number): fc.Arbitrary<Spelled> =>
  between(min, max).chain((n) => spelledAs(n, [`${n}%`, `${n} %`, `${n} percent`]));
