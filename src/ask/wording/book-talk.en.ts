/** How people speak of the job book, in cue lines (see `ask/cue.ts`), and what is answered. */
export const talkCues = {
  clear: ['new+job', 'clear+job|list', 'empty+job|list', 'start+new+job', 'drop all+patch', 'clear all+patch'],
  undo: ['undo', 'take+back -patch -lift'],
  // "Take" is read as "need" everywhere else.
  remove: ['remove|delete|drop|take|need #label job|list|off -how-many -what', 'remove|delete #label'],
  add: [
    'add|put|save patch|spot job|list|book -how-many -water -what',
    'add|save patch|spot -how-many -water -waste -what -how -why -mix|premix -@check -lift',
    'add|put job|list|book -how-many -water -waste -what -how -why -@check',
    'new|another|next+patch|spot job|list|book',
  ],
  done: ['done|finish|finished|complete|completed #label -#mass -load -#length -@check -how-many -when'],
  laid: [
    'lay|laid|put|place|dump|use|used|went|down|took|got #label #mass -how-many -@check -what',
    'on+patch|spot #label #mass -how-many -@check -what -need -order -enough',
    'load #label -how-many -@check -what',
  ],
  left: [
    'what|how-many|how left|remain|remaining -#mass -#length',
    'what to+go',
    'left to+do|lay|place',
    'what+left',
    'remaining -#mass -#length',
  ],
  list: ['show|list|read|see job|patch -how -add', 'what+on+job|list', 'which|what patch on|have'],
  total: [
    'total',
    'whole|entire+job',
    'all+patch',
    'for+job ton|mix|tack|order|load|cost|hour',
    'job ton|mix|tack|order|load|cost|hour',
    'job add+up',
  ],
} as const;

/** Words that stand before the label of a patch: "patch 3", "patch number 3". */
export const labelWords = ['patch', 'spot'];
export const labelFillers = ['number', 'no', 'nr', '#', 'num'];
/** Words before a number with its sign that make it the label of a patch: "42 tons on #3". */
export const labelLeads = ['on', 'with', 'to', 'done', 'finished'];
/** What joins the labels of a list: "patches 3 and 4". */
export const labelJoins = ['and', '&', 'y'];
/** Words that put a report on another day, and how many days back that is. */
export const dayWords: readonly (readonly [word: string, back: number])[] = [
  ['yesterday', 1],
  ['ayer', 1],
];
/** Words by which somebody reports how far it has come: "3 loads down at 140 ft of 300". */
export const progressWords = ['down', 'laid', 'lay', 'place', 'put', 'load', 'in', 'done', 'used'];
/** Words that say a patch is being changed, not asked about. */
export const changeWords = ['make', 'change', 'is', 'was', 'now', 'set', 'actually', 'should'];

const many = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}es`}`;

export const talk = {
  added: (label: string, size: string, tons: string) =>
    `Patch ${label} is on the job: ${size}${tons ? `, ${tons}` : ''}.`,
  addedOpen: (label: string, size: string, missing: string) =>
    `Patch ${label} is on the job${size ? `: ${size}` : ''}. Still to tell for its tons: ${missing}.`,
  soFar: (count: number, mass: string, order: string) =>
    `On the job: ${many(count, 'patch')}, ${mass} in place, ${order} to order.`,
  nothingToAdd: 'Give the size of the patch, then it goes on the job: add patch 300 x 12 ft at 2 in.',
  full: (most: number) =>
    `A talk carries ${most} patches at most, so this one was not added. Put the list into a job on the Job page: there it may be as long as it is.`,
  noPatch: (label: string, have: readonly string[]) =>
    have.length > 0
      ? `There is no patch ${label} on the job. I have ${have.join(', ')}.`
      : `There is no patch ${label} on the job yet. Give its size, then: add this patch to the job.`,
  which: 'Which patch? Say its number.',
  eachAlone: 'Say what went down on each patch by itself: 42 tons on patch 3, then 20 tons on patch 4.',
  byTickets: (payload: string) =>
    `How many tons is that by the tickets? Nobody has said what a truck carries, and ${payload} a load is only the usual. Nothing is written down yet.`,
  sumOf: (labels: readonly string[], mass: string) => `Patches ${labels.join(', ')} together: ${mass}.`,
  laid: (label: string, fresh: string, all: string) => `Patch ${label}: ${fresh} laid, ${all} down in all.`,
  leftOnPatch: (need: string, left: string) => `It was figured at ${need}; ${left} still to lay.`,
  overOnPatch: (need: string, over: string) => `It was figured at ${need}: that is ${over} more than that.`,
  takesBack: 'If that is not right, say: undo.',
  done: (label: string) => `Patch ${label} is done.`,
  doneBefore: (label: string) => `Patch ${label} was done already.`,
  removed: (label: string) => `Patch ${label} is off the job. To have it back, say: undo.`,
  undone: (label: string) => `Taken back: what was said last of patch ${label}.`,
  nothingToUndo: 'There is nothing to take back.',
  cleared: (count: number) => `A new job. ${many(count, 'patch')} of the old one ${count === 1 ? 'is' : 'are'} off.`,
  kept: (count: number) => `The job keeps its ${many(count, 'patch')}; to clear them too, say: new job.`,
  allDone: 'Nothing is left: all patches are done.',
  left: (count: number, labels: readonly string[], mass: string) =>
    `Left: ${many(count, 'patch')} (${labels.join(', ')}), ${mass} to lay.`,
  laidSoFar: (mass: string, done: number) => `Down so far: ${mass}; ${many(done, 'patch')} done.`,
  total: (count: number, mass: string, order: string) =>
    `The job: ${many(count, 'patch')}, ${mass} in place, ${order} to order.`,
  also: (parts: readonly string[]) => `${parts.join('. ')}.`,
  notIn: (labels: readonly string[]) => `Not in it, for something is still to tell: patch ${labels.join(', ')}.`,
  line: (label: string, size: string, tons: string, state: string) =>
    `Patch ${label}: ${[size, tons, state].filter(Boolean).join('; ')}.`,
  stateDone: 'done',
  stateLaid: (mass: string) => `${mass} down`,
  needs: (missing: string) => `still to tell: ${missing}`,
  changed: (label: string) => `Patch ${label} is changed on the job.`,
  forPatch: (label: string) => `For patch ${label}.`,
  loads: (count: string) => `Loads: ${count}`,
  short: (by: string) => `You run short: at this yield the patch takes ${by} more than was figured.`,
  over: (by: string) => `You do not run short: at this yield ${by} of what was figured stay over.`,
  even: 'You do not run short: at this yield it comes out as figured.',
  goingBy: (placed: string, whole: string, left: string) =>
    `${placed} down: at this yield the whole patch takes ${whole}, so ${left} more.`,
  moreLoads: (count: string, payload: string) => `That is ${count} more at ${payload} a load.`,
  laidAt: (depth: string, meant: string) => `Laid so far ${depth} on average, where ${meant} was meant.`,
  thick:
    'It is going down too thick: check the depth behind the blade, and bring the rest down to size, or order the difference now.',
  thin: 'It is going down too thin: check the depth behind the blade before the low part is rolled.',
  right: 'That is right.',
  giveDepth: 'Give width and depth as well, and the thickness is checked too.',
  next: {
    left: "What's left?",
    total: 'Total for the job',
    list: 'Show the job',
    undo: 'Undo',
    done: (label: string) => `Done with patch ${label}`,
    add: 'Add this patch to the job',
  },
} as const;

/** Words of a report of loads against how far they reached. */
export const paceWords = {
  /** Words that stand between and mean nothing here. */
  skipped: ['the', 'a', 'our', 'are', 'is', 'out', 'only', 'with'],
  load: ['load', 'truck'],
  of: ['of', 'de'],
  left: ['left', 'remaining', 'remain', 'coming', 'come'],
  /** What makes the figure after "of" no count of loads: "3 loads of 14 tons". */
  measured: ['ton', 'tonne', 'feet', 'foot'],
  halfway: ['halfway'],
  /** What a share is of when it is the patch's. */
  patch: ['patch', 'way', 'through', 'done', 'job', 'finished', 'length', 'there', 'along'],
  more: ['more', 'still'],
  go: ['go', 'lay', 'place'],
  toGoUnits: ['ton', 't', 'lb', 'kg', 'ft', 'm', 'yd'] as readonly string[],
  massUnits: ['ton', 't', 'lb', 'kg'] as readonly string[],
  parts: { half: 1 / 2, halfway: 1 / 2, third: 1 / 3, quarter: 1 / 4, fourth: 1 / 4, mitad: 1 / 2 } as Readonly<
    Record<string, number>
  >,
};

/** What is answered to it. */
export const pace = {
  count: (number: string) => `${number} ${number === '1' ? 'load' : 'loads'}`,
  used: (down: string, all: string, share: string, need: string) =>
    `${down} of ${all} for ${share} of the patch: at this yield the whole patch takes ${need}.`,
  checkDepth:
    'Either it is going down too thick or the loads are light: check the depth behind the blade now, and order what is lacking.',
  loadsShort: (more: string) => `You run short: ${more} more than you have.`,
  loadsOver: (over: string) => `You do not run short: ${over} of what you have stays over.`,
  shareUsed: (down: string, share: string, need: string) =>
    `${down} of the loads for ${share} of the patch: at this yield the whole patch takes ${need} of the mix you have.`,
  shareShort: (by: string) => `You run short by ${by} of the mix you have.`,
  shareOver: (by: string) => `You do not run short: ${by} of the mix you have stays over.`,
  leftShort: (left: string, more: string) => `You have ${left} to come: ${more} short at this yield.`,
  leftEnough: (left: string) => `You have ${left} to come: enough at this yield.`,
  justEnough: 'It comes out just even: nothing to spare, so watch the depth.',
  massShort: (by: string, loads: string) => `You run short by ${by}: ${loads} more to order.`,
  massOver: (by: string) => `You do not run short: ${by} to spare.`,
  have: (loads: string, payload: string, have: string, need: string) =>
    `${loads} at ${payload} are ${have}; ${need} are still to go.`,
} as const;

/** What is said where a talk is held on a job book. */
export const onJob = {
  unnamed: 'a job without a name',
  on: (name: string) => `On ${name}:`,
  mayNot: (role: string) =>
    role === 'record'
      ? 'Your link lets you write down loads and tick patches off, not change patches. Nothing was written. Ask whoever gave you the link.'
      : 'Your link lets you look, not write. Nothing was written. Ask whoever gave you the link.',
  notCleared:
    'a job that others share is not emptied by a word. Take patches off one by one, or start a new job under Jobs.',
  nothingToUndo:
    'Nothing was written from here that could be taken back. Every change stands in the log of the job, with its own Undo.',
  changedSince: 'That was changed again since, so there is nothing to take back.',
  undone: 'Taken back: what was written last from here.',
  under: (day: string) => `Written under ${day}.`,
  takesBack: 'If that is not right, say: undo.',
  notWritten:
    'This is a check only: the tons are not written down. To write them, say the tons and the patch: we laid 42 tons on patch 3.',
} as const;
