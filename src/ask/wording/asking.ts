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

/** Head words for what is done on the job, as somebody puts it who asks leave: "so blade it?", "open the lane?". */
export const doingHeads: ReadonlySet<string> = new Set(
  'back blade bring call carry cover cross cut dig do drive drop dump fill fix forget go grab haul hold jump keep kick lay leave let load lose mill move open order park patch pick pull push put quit ride roll run scrap send set shoot shovel shut skip spray spread start stay stop stretch sweep tack take tell throw thin turn use wait wash work'.split(
    ' ',
  ),
);

/** What such a word goes with right after it. */
export const objectHeads: ReadonlySet<string> = new Set(
  'it them em that this him her the a an on out off over up down in back now anyway anyways there ahead to with without around away through across anything something everybody'.split(
    ' ',
  ),
);

/** Who has a say on the job, or is told what to do. */
export const peopleHeads: ReadonlySet<string> = new Set(
  'boss foreman super superintendent supervisor inspector engineer office operator driver kid guy guys crew buddy he she they contractor county'.split(
    ' ',
  ),
);

/** What they do who would have it so. */
export const sayingHeads: ReadonlySet<string> = new Set(
  'say says said want wants wanted told tells figures thinks claims swears insists'.split(' '),
);

/** What they would have left out. */
export const leavingOut: ReadonlySet<string> = new Set(
  "forget skip leave without dont don't never no not bother".split(' '),
);
