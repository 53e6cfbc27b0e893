/** How people ask about the order of the work, in cue lines (see `ask/cue.ts`). */
export const stepAsks = {
  whole: [
    'checklist',
    'check+list',
    'all|every+step|steps',
    'step+by+step',
    'start+to+finish',
    'whole+procedure|process|job -long -how-many',
    'procedure patch|blade|job',
    'miss|missed|forget|forgot anything|something',
    'order step|steps',
    'what step|steps patch|job|order',
  ],
  next: [
    'now+what',
    'what+now',
    "what|what's|whats next -to",
    'next+step',
    'then+what',
    'what+then',
    'after+that what|then',
    'what after+that|this',
    'what need|do now',
    'where go|from+here',
    'next -lift -patch -pass -load -truck -day -week -year -lane -sign -time -how-many -how-far -door',
  ],
  done: [
    'done -how-many -how-far -when -how -check -what',
    "that's+done",
    'finished -how-many -when -how -check',
    'all+done',
    'did that|it -what -how -why',
  ],
} as const;

/** Words that stand before or after the name of a step: each is put in place of NAME. */
export const stepFrames = {
  before: ['before NAME -@check -how-many -how-far -how-fast -@why'],
  after: [
    'after NAME what|next|then|now -how-many -how-far -how-fast',
    'what|next come|comes|do after NAME -how-many -how-far',
  ],
  done: ['done|finished|complete|completed|through NAME -not -before -when -how -how-many -how-far -@why -@check'],
} as const;

/** Which lift a word means, counted from the bottom. */
export const ordinals: Readonly<Record<string, number>> = {
  first: 1,
  '1st': 1,
  bottom: 1,
  second: 2,
  '2nd': 2,
  third: 3,
  '3rd': 3,
  fourth: 4,
  '4th': 4,
  fifth: 5,
  '5th': 5,
  sixth: 6,
  '6th': 6,
  seventh: 7,
  '7th': 7,
  eighth: 8,
  '8th': 8,
};

/** Words for the last lift. */
export const lastWords: readonly string[] = ['finish', 'final', 'last', 'top', 'surface'];
