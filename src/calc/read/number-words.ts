/** Where a word stands in a spelled number: twenty-five is a ten and a one, doscientos cinco a hundreds and a one. */
export type Rank = 'one' | 'teen' | 'ten' | 'hundreds' | 'hundred' | 'thousand';

export interface NumberWord {
  readonly value: number;
  readonly rank: Rank;
  readonly spanish: boolean;
}

const english: readonly (readonly [Rank, number, number, string])[] = [
  ['one', 0, 1, 'zero one two three four five six seven eight nine'],
  ['teen', 10, 1, 'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'],
  ['ten', 20, 10, 'twenty thirty forty fifty sixty seventy eighty ninety'],
  ['hundred', 100, 0, 'hundred'],
  ['thousand', 1000, 0, 'thousand'],
];

const spanish: readonly (readonly [Rank, number, number, string])[] = [
  ['one', 0, 1, 'cero uno dos tres cuatro cinco seis siete ocho nueve'],
  ['one', 1, 0, 'un una'],
  ['teen', 10, 1, 'diez once doce trece catorce quince dieciseis diecisiete dieciocho diecinueve'],
  ['teen', 16, 0, 'dieciséis'],
  ['ten', 20, 10, 'veinte treinta cuarenta cincuenta sesenta setenta ochenta noventa'],
  [
    'teen',
    21,
    1,
    'veintiuno veintidos veintitres veinticuatro veinticinco veintiseis veintisiete veintiocho veintinueve',
  ],
  ['teen', 22, 1, 'veintidós veintitrés'],
  ['teen', 26, 0, 'veintiséis'],
  ['hundreds', 100, 0, 'cien ciento'],
  [
    'hundreds',
    200,
    100,
    'doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos novecientos',
  ],
  [
    'hundreds',
    200,
    100,
    'doscientas trescientas cuatrocientas quinientas seiscientas setecientas ochocientas novecientas',
  ],
  ['thousand', 1000, 0, 'mil'],
];

export const numberWords: ReadonlyMap<string, NumberWord> = new Map(
  [...english.map((row) => [row, false] as const), ...spanish.map((row) => [row, true] as const)].flatMap(
    ([[rank, first, step, words], isSpanish]) =>
      words.split(' ').map((word, k) => [word, { value: first + k * step, rank, spanish: isSpanish }] as const),
  ),
);

export interface PartWord {
  /** What the whole is divided by. */
  readonly parts: number;
  /** Three QUARTERS: said of more than one. */
  readonly plural: boolean;
  /** First of all an ordinal (the third mile): a part only after "a" or a count, or before "of". */
  readonly ordinal: boolean;
}

const parts: readonly (readonly [number, string, ordinal: boolean])[] = [
  [2, 'half', false],
  [4, 'quarter', false],
  [3, 'third', true],
  [4, 'fourth', true],
  [5, 'fifth', true],
  [6, 'sixth', true],
  [8, 'eighth', false],
  [10, 'tenth', false],
  [16, 'sixteenth', false],
  [100, 'hundredth', false],
  [2, 'medio', false],
  [2, 'media', false],
  [3, 'tercio', false],
  [4, 'cuarto', false],
  [8, 'octavo', false],
  [10, 'décimo', false],
];

/** Words for parts of a whole: half, quarters, tres CUARTOS. */
export const partWords: ReadonlyMap<string, PartWord> = new Map(
  parts.flatMap(([n, word, ordinal]): [string, PartWord][] => [
    [word, { parts: n, plural: false, ordinal }],
    [word === 'half' ? 'halves' : `${word}s`, { parts: n, plural: true, ordinal: false }],
  ]),
);

/** Denominators people write by hand; 12/25 is a date and 24/7 a saying. */
export const denominators: ReadonlySet<number> = new Set([2, 3, 4, 5, 6, 8, 10, 12, 16, 32, 64]);

/** Digits said after "point": point zero five, point oh five. */
export const spokenDigits: ReadonlyMap<string, string> = new Map(
  'zero:0 oh:0 one:1 two:2 three:3 four:4 five:5 six:6 seven:7 eight:8 nine:9'
    .split(' ')
    .map((pair) => pair.split(':') as [string, string]),
);
