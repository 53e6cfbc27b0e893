/** What is said of an agency's file that cannot be used. Another language is another file of this shape. */
export const agencyWords = {
  theFile: 'the file',
  tooLong: (most: number) => `the file is over ${most} characters`,
  tooDeep: 'the file is nested deeper than any part of such a file',
  mustBeObject: (what: string) => `${what} must be an object, in braces`,
  mustBeFigure: (unit: string) => `a figure stands with its unit, as { "number": 1, "unit": "${unit}" }`,
  mustBeText: (key: string, most: number) => `${key} must be one line of text, ${most} characters at most`,
  mustBeRows: 'a table is a list of rows',
  mustBeNumber: (key: string) => `${key} must be a number, without quotes`,
  noSuchName: (name: string, nearest: string | undefined, known: readonly string[]) =>
    `there is no ${name} here${nearest ? ` (did you mean ${nearest}?)` : known.length ? `; there is ${known.join(', ')}` : ''}`,
  mustBeOneOf: (key: string, known: readonly string[]) => `${key} must be one of ${known.join(', ')}`,
  noSuchEnd: (rule: string, end: string, other: string) => `${rule} has no ${end}: give its ${other}`,
  noBound: (rule: string) => `${rule} has neither a min nor a max: give the one that is yours`,
  crossed: (min: string, max: string) => `the min, ${min}, is above the max, ${max}`,
  otherDimension: (id: string, dimension: string, units: readonly string[], said: string, other: string) =>
    `${id} is a ${dimension} (${units.join(', ')}), and ${said} is a ${other}`,
  implausible: (figure: string, id: string) => `${figure} is outside what ${id} can be`,
  workedOut: (id: string) =>
    `${id} is worked out by a rule, so a default for it would never be used: give a limit or rows of a table`,
  twice: (option: string) => `there are two rows for ${option}: keep one, or say up to which figure each one holds`,
  risingRows: (option: string) =>
    `rows for ${option} must rise, all by the same figure; only the last may be without a max`,
};
