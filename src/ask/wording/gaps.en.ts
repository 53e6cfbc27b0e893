/** Questions that found no answer, and who may see them. Another language is another file of this shape. */
export const gaps = {
  /** Stands where something was left out. */
  left: '…',
  longest: 300,
  /** A word after one of these is most likely a name. */
  introduced: [
    'my name is',
    'name is',
    'named',
    'called',
    'mr',
    'mrs',
    'ms',
    'miss',
    'sr',
    'senor',
    'señor',
    'foreman',
    'boss',
    'sincerely',
    'regards',
  ] as readonly string[],
  /** A first word before one of these too. */
  says: ['says', 'said', 'wants', 'asks', 'asked', 'told', 'here', 'thinks', 'dice'] as readonly string[],
  heading: 'Show a question to whoever keeps the rules',
  text: 'A question that finds no answer shows what the rules lack. Nothing you ask is kept unless you send it from here. This is all that is kept: these words, why there was no answer, and the day. No name, no address, nothing of the rest of the talk. Take out what you do not want to send.',
  label: 'What is sent',
  send: 'Send it',
  back: 'Back to the questions',
  sent: 'Sent. Whoever keeps the rules will see it.',
  scrubbed: 'Taken out before it is kept: what looked like a name, an address or a telephone number.',
  answered: 'That question finds an answer now, so it was not kept.',
  full: 'Enough questions wait to be read: nothing was kept. Try again another week.',
  empty: 'Type the question that found no answer.',
  unknown: 'This is no link of a keeper of the rules, or it was taken back.',
  keeper: {
    title: 'Questions without an answer',
    text: 'Sent in by whoever asked, by the reason why there was none; the newest first, with how often one was sent.',
    none: 'None yet.',
    group: (reason: string, count: number) => `${reason}: ${count}`,
    export: 'As lines for npm run gaps',
    clear: 'Clear them all',
    clearing: 'Save them first: this cannot be taken back.',
  },
} as const;

/** Why there was no answer, in words. */
export const reasons: Readonly<Record<string, string>> = {
  'no-goal': 'What is asked was not understood',
  'missing-fact': 'A figure was missing',
  ambiguous: 'It could mean more than one thing',
  'unit-missing': 'A unit was missing',
  'unit-wrong': 'A unit did not fit',
  conflict: 'The figures disagree',
  'out-of-range': 'A figure was out of range',
  'no-rule': 'No rule for it',
  'out-of-scope': 'Outside what the rules cover',
};
