/** Head words that make a figure of the job so many times what it was: "double the length". */
export const times: ReadonlyMap<string, number> = new Map([
  ['double', 2],
  ['twice', 2],
  ['triple', 3],
  ['half', 0.5],
  ['halve', 0.5],
]);

/** Words that make it so much more or less: "10 ft longer", and the word of what grows. */
export const grows: ReadonlyMap<string, { readonly of: string; readonly sign: 1 | -1 }> = new Map([
  ['longer', { of: 'long', sign: 1 }],
  ['shorter', { of: 'long', sign: -1 }],
  ['wider', { of: 'wide', sign: 1 }],
  ['narrower', { of: 'wide', sign: -1 }],
  ['deeper', { of: 'deep', sign: 1 }],
  ['shallower', { of: 'deep', sign: -1 }],
  ['thicker', { of: 'thick', sign: 1 }],
  ['thinner', { of: 'thick', sign: -1 }],
]);
