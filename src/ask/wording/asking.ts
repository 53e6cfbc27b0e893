/** Head words that ask for a figure. */
export const figureAsks: readonly string[] = ['how-many', 'how-far', 'how-fast'];

/** Head words that ask for a figure or a thing. */
export const askingHeads: readonly string[] = [...figureAsks, 'how', 'what', 'which', 'where'];

/** Every head word that opens a question. */
export const openingHeads: readonly string[] = [...askingHeads, 'when', 'who', 'why'];

/** Head words by which somebody tells what there is on the road, rather than what to work it out anew with. */
export const havingHeads: readonly string[] = [
  'got',
  'have',
  'has',
  'had',
  'set',
  'put',
  'laid',
  'left',
  'made',
  'gave',
  'only',
  'room',
  'ours',
];

/** Head words by which somebody tells whose rule it is that has a figure, or that it is one. */
export const ruleHeads: readonly string[] = [
  'permit',
  'limit',
  'max',
  'min',
  'rule',
  'spec',
  'county',
  'state',
  'agency',
  'district',
  'city',
  'township',
];
