/** Who sits in a seat. */
const seatNames: Readonly<Record<string, string>> = {
  'new-hand': 'new hand',
  roller: 'roller operator',
  tack: 'tack truck',
  truck: 'truck driver',
  blade: 'blade operator',
};

/** Every sentence of a quiz that no record holds. */
export const quiz = {
  yes: 'Yes',
  no: 'No',
  right: (situation: string) => `${situation} Is that right?`,
  holds: (situation: string) => `${situation} Does that hold to the rule?`,
  fact: (title: string, text: string) => `${capitalOf(title)}: ${text}.`,
  ruleOfAgency: (title: string, bound: string) => `By our agency's rule (${title}) the figure is ${bound}.`,
  atMost: (most: string) => `at most ${most}`,
  atLeast: (least: string) => `at least ${least}`,
  between: (least: string, most: string) => `${least} to ${most}`,
  mostOf: (title: string) => `${capitalOf(title)}: what is the most it may be?`,
  whichHold: (title: string) => `${capitalOf(title)}: which of these figures hold to the rule? Mark every one.`,
  gap: '____',
  whichRight: (situation: string) => `${situation} Which of these fills the gap, so that the work is right?`,
  goAhead: (situation: string) => `${situation} Do you go ahead?`,
  unsafe: [
    'What here has to be put right at once?',
    'Which of these stops the work?',
    'Which of these can hurt somebody today?',
    'Where do you step in first?',
    'Which of these do you put right before anything else?',
    'Which of these do you report and stop?',
    'You walk the job. Which of these is wrong?',
    'Which of these is a danger?',
  ],
  whyRule: (title: string) => `What is the reason for this rule: ${title}?`,
  cause: (seen: string) => `You see ${seen}. Which of these is a likely cause?`,
  causes: (seen: string) => `You see ${seen}. Which of these are likely causes? Mark every one.`,
  symptom: (cause: string) => `What comes of this: ${cause}?`,
  cure: (seen: string, cause: string) => `You see ${seen}. The cause: ${cause}. What cures it?`,
  next: (title: string, lift?: number) =>
    lift === undefined
      ? `The step "${title}" is done. Which comes next?`
      : `A patch of two lifts. The step "${title}" is done for lift ${lift}. Which comes next?`,
  order: 'Put these steps of a patch of two lifts in order, the first one first.',
  orderOf: (title: string) => `Put the parts of this repair in order, the first one first: ${title}.`,
  repair: (seen: string, facts: readonly string[]) =>
    `You see ${seen}. ${facts.map((fact) => `${capitalOf(fact)}.`).join(' ')} Which repair suits?`,
  found: (title: string, text: string) => `${title}: ${text}`,
  distance: (road: string, what: string, by: string) =>
    `${capitalOf(by)}: ${road}. How far is it at least to the ${what}?`,
  sight: (speed: string) =>
    `Traffic goes ${speed} on a level road. How long is the buffer by the table of stopping distances?`,
  strength: (title: string) => `${capitalOf(title)}: does the manual say that it shall, should or may be so?`,
  working: (formula: string, figures: string, result: string) => `${capitalOf(formula)} = ${figures} = ${result}.`,
  because: (text: string) => capitalOf(text),
  orderWhy: (titles: readonly string[]) => `In order: ${titles.join(', then ')}.`,
  title: (topics: readonly string[], count: number, levels: readonly string[], variant: string) =>
    `${capitalOf(topics.join(', '))}: ${count} question${count === 1 ? '' : 's'}${levels.length ? `, ${levels.join(' and ')}` : ''}${variant === 'A' ? '' : `, set ${variant}`}`,
  seatTitle: (seat: string) => `for the ${seatNames[seat] ?? seat}`,
  everything: 'everything',
  levels: { easy: 'easy', medium: 'medium', hard: 'hard' },
  kinds: {
    'true-false': 'yes or no',
    one: 'choose one',
    many: 'mark every one',
    order: 'put in order',
    number: 'fill in a figure',
  },
  certifies: 'This is practice. It certifies nobody as a flagger or an operator.',
  mustPass: 'Must be right',
  mustPassRule: 'A set with a question that must be right is failed when that one is missed, whatever the score.',
  sheetHead: (title: string, seed: string, rules: string) => `${title}\nSeed ${seed}, rules ${rules}`,
  question: (number: number, stem: string, must: string) => `${number}. ${must ? `[${must}] ` : ''}${stem}`,
  drawing: (words: string) => `   [${words}]`,
  option: (letter: string, text: string) => `   ${letter}) ${text}`,
  blank: (unit: string) => `   Answer: ________ ${unit}`.trimEnd(),
  keyHead: 'Answer key',
  keyAnswer: (letter: string, text: string) => `${letter}) ${text}`,
  keyJoin: (inOrder: boolean) => (inOrder ? ' > ' : '; '),
  keyLine: (number: number, key: string, tolerance: string) => `${number}. ${key}${tolerance}`,
  tolerance: (least: string, most: string) => ` (${least} to ${most} counts as right)`,
  whyLine: (why: string) => `   Why: ${why}`,
  sourceLine: (source: string) => `   Source: ${source}`,
  mistakeLine: (letter: string, mistake: string) => `   ${letter}: ${mistake}`,
  ruleChanged: (then: string, now: string) =>
    `This key was made by rules ${then}; the rules are now ${now}. Make the set anew before you use it.`,
  built: (title: string, seed: string) => `${title}. Seed ${seed}: the same seed makes the same set.`,
  fault: {
    count: (most: number) => `Ask for 1 to ${most} questions.`,
    topic: (asked: string, topics: readonly string[]) =>
      `There are no questions on "${asked}". There are on ${topics.join(', ')}.`,
    seat: (asked: string, seats: readonly string[]) => `"${asked}" is no seat. Take ${seats.join(', ')}.`,
    level: (asked: string, all: readonly string[]) =>
      `"${asked}" is no level. Take ${all.join(', ')}, or leave it out.`,
    kind: (asked: string, all: readonly string[]) => `"${asked}" is no kind of question. Take ${all.join(', ')}.`,
    about: (id: string) => `There is no question on "${id}". Take the id of a fault, a rule or a step from the list.`,
    swaps: (most: number) => `${most} questions were swapped already. Make a new set: give it another seed.`,
    tooMany: (what: string, count: number, most: number) =>
      most === 0
        ? `There are no questions like that (${what}). Leave out the level or the kind, or take another topic.`
        : `${count} are too many: ${most} different questions can be had on ${what}. Ask for ${most}, or add a topic or a level.`,
    tooFew: (seat: string, musts: number) =>
      `A set for the ${seat} has ${musts} questions that must be right. Ask for at least ${musts}.`,
  },
  offers: ['quiz for new hands, 10 questions', 'five question quiz on safety'],
} as const;

function capitalOf(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
