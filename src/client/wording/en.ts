const count = (number: number, one: string, many: string): string => `${number} ${number === 1 ? one : many}`;

/** Everything that only the script of the page says. Another language is another file of this shape. */
export const en = {
  working: 'Working it out…',
  twice: 'Sent already: the answer is above.',
  tooLong: (most: number) =>
    `The question is over ${most.toLocaleString('en-US')} characters: say it shorter; send depth readings a part at a time, each row with its station.`,
  nothingTyped: 'Type a question first.',
  cleared: 'Started over.',
  putBack: 'Put it back',
  changeFigure: 'Change the figure in the box and send it.',
  restored: 'Your last questions on this phone are back.',
  otherTab: 'Another window went on with this job. What you ask here is kept beside it, as a job of its own.',
  notKept:
    'This phone keeps nothing for this page (a private window, or no room left). Answers still work, and are gone with the page: save a copy of what must last.',
  onJob: 'On the job',
  leaveJob: 'Leave it',
  lastWritten: (what: string) => `Written last: ${what}.`,
  onWhichJob: 'No job is open here. Write it on',
  oddPair:
    'The page and its rules on this phone are of two versions, so questions go to the server. Reload to have both the same.',
  noEngine: 'The part that answers on the phone did not load, so this question goes to the server.',
  noSignalYet:
    'There is no signal, and this part of the page did not come before it went. Your question stays in the box: send it when there is signal.',
  update: 'New rules are ready.',
  updateNow: 'Use them now',
  updateLater: 'Later',
  updated: 'New rules are in use in another window. Reload this page when you are ready.',
  reload: 'Reload',
  offline: 'No signal. Everything except sending works.',
  ready: 'Ready to work with no signal.',
  getting: 'Getting ready to work with no signal…',
  age0: (rules: string) => `Rules ${rules}:`,
  age: (days: number) => (days === 0 ? 'made today' : `${count(days, 'day', 'days')} old`),
  clock: 'the clock of this phone is behind them, so their age cannot be told',
  exportName: (day: string) => `bladehand-${day}.json`,
  exported: (number: number) => `Saved ${count(number, 'record', 'records')} to a file.`,
  imported: (number: number) => `Took in ${count(number, 'record', 'records')}.`,
  importFault: {
    json: 'This file is not one that Bladehand saved: it cannot be read. Nothing was changed.',
    other: 'This file is not one that Bladehand saved. Nothing was changed.',
    newer:
      'This file was saved by a newer Bladehand. Reload this page to get the newer one, then take the file in again. Nothing was changed.',
    damaged: (number: number) => `${count(number, 'record in it was', 'records in it were')} damaged and left out.`,
  },
  keeping: 'Kept on this phone only',
  keptHere:
    'Your questions and ticks are kept in this browser and nowhere else. Some phones clear it after a week without use: save a copy of what must last.',
  export: 'Save a copy to a file',
  import: 'Take in a saved file',
  clear: 'Clear everything',
  clearYes: 'Yes, clear',
  clearNo: 'No, keep it',
  clearAsk: 'Clear everything kept on this phone? A copy can be saved first.',
  clearedAll: 'Everything kept on this phone is gone.',
} as const;
