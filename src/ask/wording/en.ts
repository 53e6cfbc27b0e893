/** Every sentence of the engine that no record holds. Another language is another file of this shape. */
export const en = {
  edition: (edition: string) => (/^\d+$/.test(edition) ? `ed. ${edition}` : edition),
  seen: {
    read: '',
    restated: ' (as restated by others)',
    memory: ' (from memory, to be confirmed)',
    practice: '',
    derived: ' (worked out)',
  },
  unsettled: 'not settled',
  zone: {
    load: (things: readonly string[]) => `Load: ${things.join(', ')}.`,
    need: (count: number, what: string, withRoom?: number) =>
      withRoom === undefined ? `${count} × ${what}` : `${count} × ${what} (${withRoom} with room to turn)`,
    mayAdd: (signs: readonly string[]) => `May be added: ${signs.join(', ')}.`,
  },
  figure: (title: string, text: string, range?: string) => `${title}: ${text}${range ? ` (${range})` : ''}.`,
  range: (low: string, high: string) => `${low} to ${high}`,
  from: (facts: readonly string[]) => `From ${facts.join(', ')}.`,
  assumed: (facts: readonly string[]) => `Assumed: ${facts.join(', ')}.`,
  fact: (title: string, text: string) => `${title} ${text}`,
  readAs: (typed: string, text: string) => `${typed} read as ${text}`,
  status: {
    ok: 'Holds',
    caution: 'Take care',
    stop: 'Stop',
    'cannot-tell': "Can't tell",
    'not-applicable': 'Does not apply',
  },
  judged: (status: string, text: string, fix?: string) => `${status}: ${text}${fix ? ` ${fix}` : ''}`,
  because: (text: string) => `Why: ${text}`,
  sources: (lines: readonly string[]) => `Source: ${lines.join('; ')}.`,
  compared: (
    how: 'right' | 'over' | 'short' | 'within' | 'beyond',
    has: string,
    need: string,
    gap: string,
    title: string,
  ) =>
    ({
      right: `Yes: ${has} is right for the ${title}; I make it ${need}.`,
      over: `Yes: ${has} is enough; ${the(title)} ${comes(title)} to ${need}, so ${gap} over.`,
      short: `No: ${has} is short; ${the(title)} ${comes(title)} to ${need}, ${gap} more.`,
      within: `Yes: ${has} can be done; ${the(title)} ${comes(title)} to ${need}, so ${gap} to spare.`,
      beyond: `No: ${has} is too much; ${the(title)} ${comes(title)} to ${need}, ${gap} less.`,
    })[how],
  working: (formula: string, figures: string, result: string) => `${formula} = ${figures} = ${result}.`,
  didYouMean: (figure: string) => `Did you mean ${figure}?`,
  converted: (from: string, to: string) => `${from} is ${to}.`,
  patch: (number: number, text: string) => `patch ${number} ${text}`,
  patches: (parts: readonly string[]) => `Together: ${parts.join(', ')}.`,
  addShare: (whole: string, share: string) => `${whole} × (1 + ${share})`,
  withShare: (title: string, share: string) => `With ${title} ${share}, as you said.`,
  agencyFirst: "Your agency's rules come before these.",
  offTheRoad: 'Read this off the road: not while flagging, operating, or in the path of anything.',
  known: (facts: readonly string[]) => (facts.length ? `I have ${facts.join(', ')}.` : ''),
  ask: (question: string, known: string) => (known ? `${question} ${known}` : question),
  whatFor: (known: string) => `What do you want to know? ${known}`.trim(),
  /** How a card is asked for by its title; cards.ts reads it. */
  cardNamed: (title: string) => `Card: ${title}`,
  whatAbout: (titles: readonly string[]) => `What do you want to know? I can tell of: ${titles.join('; ')}.`,
  scope:
    'I answer on blade patching: tons, lifts, tack, windrows, rolling, trucks, traffic control, weather, the steps and what goes wrong.',
  example: 'Try: how many tons for 300 x 12 ft at 2 in.',
  notUnderstood: (scope: string, example: string) => `That is not something I have a rule for. ${scope} ${example}`,
  noWay: (title: string) =>
    `I have no way from what you gave to the ${title}. Give the size and the depth of the patch, or say it another way.`,
  empty: 'Type a question. Try: how many tons for 300 x 12 ft at 2 in.',
  tooLong: (most: number) =>
    `That is over ${most} characters. Ask one thing at a time, in a line or two; send depth readings a part at a time, each row with its station, and they are put together.`,
  notPositive: (figure: string, title: string) => `${figure} cannot be the ${title}. Give a figure above nothing.`,
  unlikely: (figure: string, title: string, low: string, high: string) =>
    `${capitalOf(figure)} is unlikely for the ${title}: I work from ${low} to ${high}. Say it again with its unit, or the figure you meant.`,
  wrongUnit: (figure: string, title: string, wanted: string) =>
    `${capitalOf(figure)} cannot be the ${title}: that is measured in ${wanted}. Which figure did you mean?`,
  noUnit: (typed: string) => `What is ${typed}: feet, inches, tons? Say the unit or what it is of.`,
  whichReading: (typed: string, readings: readonly string[]) =>
    `${typed} can be read two ways: ${readings.join(', or ')}. Which is it?`,
  whatElse: (typed: string, title: string) =>
    `What is ${typed}? I have another figure for the ${title}, and one of the two would be left out. Say what it is of, or ask each part by itself.`,
  whatIs: (typed: string, title: string) =>
    `What is ${typed}? Without it I would take the usual ${title}. Say what it is of.`,
  conflict: (stated: string, implied: string) =>
    `These figures do not agree: you gave ${stated}, but the others make it ${implied}. Which one is off?`,
  conflictOf: (stated: readonly string[], wouldBe: readonly string[]) =>
    `These figures do not agree: ${joined(stated, ' and ')}. Going by the others, it would be ${joined(wouldBe, ', or ')}. Which one is off?`,
  ignoredFigure: 'not used: nothing here tells what it is of',
  ignoredHere: (title: string) => `not needed for the ${title}`,
  jobDropped: 'The job sent with this could not be read, so I start afresh.',
  englishOnly: 'La respuesta está en inglés por ahora. (Answered in English for now.)',
  agencyFault: (place: string, text: string) =>
    `The agency's rules cannot be used${place ? `, at ${place}` : ''}: ${text}. Mend the file; nothing is answered with the general figure in its place.`,
  agencyFigure: (name: string, general?: string) =>
    general ? `${name}'s figure; the general one is ${general}` : `${name}'s figure`,
  yourRule: 'your own rule',
  byRuleOf: (text: string, owner: string) => `${text} (By ${owner}.)`,
  generally: (text: string) => `In general practice: ${text}`,
  helpNext: [
    'how many tons for 300 x 12 ft at 2 in',
    'can I lay 2 inches in one lift',
    "what's next",
    'the mat is tearing',
  ],
  help: (scope: string, example: string) => `If somebody is hurt or something burns, say so first. ${scope} ${example}`,
  startedOver: 'Started afresh: nothing is kept from before. What is the patch?',
  steps: {
    checklist: (lifts?: string) => (lifts ? `Checklist, ${lifts} lift${lifts === '1' ? '' : 's'}:` : 'Checklist:'),
    liftsUnknown: 'The lifts stand here once each: tell me how deep the deepest spot is, and I list every one.',
    item: (place: number, title: string) => `${place}. ${title}`,
    title: (title: string, lift?: number, lifts?: number) =>
      lift === undefined ? title : `${title}, lift ${lift}${lifts === undefined ? '' : ` of ${lifts}`}`,
    next: (title: string, text: string) => `Next: ${title}. ${text}`,
    either: (title: string, other: string, text: string) =>
      `Next: ${title}, or ${other} where one lift is left. ${text}`,
    one: (title: string, text: string) => `${title}. ${text}`,
    kept: (title: string, because: string, text: string) =>
      `${title}: it is a step of the work, not to be left out. ${because}\n${text}`,
    craft: (title: string, text: string) => `${title}: ${text}`,
    check: (lines: readonly string[]) => (lines.length ? `Check: ${lines.join(' ')}` : ''),
    good: (text: string) => `Good: ${text}`,
    watch: (text: string) => `Watch: ${text}`,
    notYet: (text: string) => `Not yet. ${text}`,
    allBefore: (title: string) => `Before the step "${title}", in order:`,
    allAfter: (title: string) => `After the step "${title}", in order:`,
    allBetween: (from: string, to: string) => `Between the steps "${from}" and "${to}", in order:`,
    first: (title: string) => `Nothing comes before: the job begins with the step "${title}".`,
    jobDone: 'That was the last step: the job is done. Look at it again in a few days, and after the first rain.',
    where: 'Where is the job now?',
    whereChoices: [
      ['nothing done yet', 'give me the whole checklist'],
      ['traffic control is up', 'traffic control is up, what next'],
      ['swept', 'swept, what next'],
      ['tack is down', 'tack is down, what next'],
      ['mix is dumped', 'mix is dumped, what next'],
      ['first lift is laid', 'first lift is laid, what next'],
    ],
    noSuchLift: (lift: number, lifts: number) =>
      `This patch has ${lifts} lift${lifts === 1 ? '' : 's'}, so there is no lift ${lift}. Which lift is it, or how deep is the patch?`,
    asks: { next: "What's next?", whole: 'Give me the whole checklist.', done: 'Done, what next?' },
  },
  fault: {
    found: (title: string, seen: string) => `${title}: ${seen}.`,
    causes: 'Likely causes, the likeliest first:',
    cause: (place: number, text: string, remedy: string) => `${place}. ${text}: ${remedy}`,
    now: (text: string) => `Now: ${text}`,
    nextTime: (text: string) => `Next time: ${text}`,
    which: 'Which is it?',
  },
  repair: {
    found: (repair: string, defect: string, because: string) => `${repair} for ${defect}: ${because}.`,
    isAsked: (asked: string, yes: boolean, holding: boolean) =>
      yes ? (holding ? `Yes, ${asked}, as a holding repair only.` : `Yes, ${asked}.`) : `No ${asked} here.`,
    holding: 'A holding repair: it buys time and does not cure.',
    first: (names: readonly string[]) => `With it: ${names.join(', ')}.`,
    severity: (level: string, scheme: string, source: string) => `${level} by ${scheme} (${source})`,
    severities: (lines: readonly string[]) => `Severity: ${lines.join('; ')}.`,
    engineer: 'Call the engineer as well.',
    notDesign: 'This is not a pavement design: soft, wet, recurring or on a bridge, it is the engineer’s call.',
    how: (lines: readonly string[]) => lines.join(' '),
    checklist: 'Give me the whole checklist.',
    known: (facts: readonly string[]) => (facts.length ? `I have ${facts.join(', ')}.` : ''),
  },
  notRead: 'This line could not be read: send a question, or an object with a question in it.',
} as const;

function capitalOf(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "a, b and c". */
const joined = (parts: readonly string[], last: string): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')}${last}${parts.at(-1)}`;

/** "The tack needed", but "how far a load goes". */
const the = (title: string): string => (title.startsWith('how ') ? title : `the ${title}`);

/** What ends the name of the thing in a title, before what it is for. */
const afterName = /,| needed| to | across| of /;

/** "The lifts come", "the roller trips, each lift, come", but "the mix comes". */
const comes = (title: string): string =>
  !title.startsWith('how ') && /[^s]s$/.test(title.split(afterName)[0]!) ? 'come' : 'comes';
