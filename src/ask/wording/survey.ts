import type { RowFault } from '../../calc/survey/sheet.ts';

const list = (parts: readonly string[]): string => parts.join(', ');
const lifts = (count: number): string => (count === 1 ? '1 lift' : `${count} lifts`);

const why = ({ why: kind, cell = '', has = 0, of = 0 }: RowFault): string =>
  ({
    'no-number': `“${cell}” is no depth`,
    'no-reading': 'no depth in it',
    'too-few': `${has} of ${of} readings`,
    'too-many': `${has} readings, the others have ${of}`,
    twice: `${cell} is there twice`,
    'no-station': 'no station at its head',
    unit: `${cell} is deeper than a patch can be`,
  })[kind];

/** Sentences about depth readings. Another language is another file of this shape. */
export const surveyWords = {
  read: (count: number) => `${count} readings read.`,
  tooMany: (most: number) =>
    `That is over ${most} depth readings, the most I keep. Say “start over” and send one patch at a time, or every second station.`,
  added: (before: number) =>
    `Added to the ${before === 1 ? 'row' : `${before} rows`} sent before; “start over” begins another patch.`,
  rowsRead: (count: number) => `${count === 1 ? '1 row' : `${count} rows`} read. Not read:`,
  fault: (fault: RowFault) => `line ${fault.line}: ${fault.text} (${why(fault)})`,
  unread: (typed: string) => `still open: ${typed}`,
  sendRow: 'Send that row again, or leave it out. The others are kept.',
  sendAll: 'Send the readings again with that put right.',
  leaveOut: 'leave it out',
  stations: (count: number, places: number, from: string, to: string, average: string) =>
    `${count === places ? `${count} readings` : `${count} readings at ${places} places`}, ${from} to ${to}: ${average} on average.`,
  section: (count: number, average: string) => `${count} readings across one section: ${average} on average.`,
  counted: (said: number, read: number) => `You said ${said} readings; ${read} were read.`,
  under: (edge: string) => `Read under a ${edge} straightedge: a longer one finds more.`,
  volumes: (texts: readonly string[], difference: number | undefined) =>
    texts.length === 0
      ? ''
      : difference === undefined
        ? `Volume ${texts[0]} by trapezoids. Simpson's rule needs an odd number of readings at equal steps.`
        : `Volume ${texts[0]} by trapezoids, ${texts[1]} by Simpson's rule: ${
            Math.abs(difference) < 0.05
              ? 'the same'
              : `${Math.abs(difference).toFixed(1)} % ${difference < 0 ? 'less' : 'more'}`
          }.`,
  deepest: (depth: string, place: string | undefined, across: string | undefined, count: number) =>
    `Deepest: ${depth}${place ? ` at ${place}` : ''}${across ? `, ${across}` : ''}: ${lifts(count)} there.`,
  fromLeft: (offset: string) => `${offset} from the left`,
  lifts: (runs: readonly { from: string; to: string; lifts: number }[]) =>
    `Lifts: ${list(runs.map(({ from, to, lifts: count }) => `${from === to ? from : `${from} to ${to}`}: ${count}`))}.`,
  low: (label: string, depth: string) => `${label} (${depth})`,
  fillFirst: (lows: readonly string[], level: string, tons: { lows: string; rest: string } | undefined) =>
    `Fill first: ${list(lows)}, until ${level} is left${tons ? `: ${tons.lows}. Then over all: ${tons.rest}` : ''}.`,
  noLows: (count: number) => `No low stands out: ${lifts(count)} over all.`,
  wholeWidth: 'Each reading is taken for the whole width there: with more across, the tons are nearer.',
  evenly: 'Readings across are taken as evenly spaced from edge to edge.',
  steps: (step: string) => `Readings along are taken as ${step} apart.`,
  high: (count: number) =>
    `${count === 1 ? '1 high spot' : `${count} high spots`} below nothing: counted as none. Cut those first.`,
  leftOut: (names: readonly string[]) => `Columns not used: ${list(names)}.`,
  trapezoidRule: 'sum of step × mean of the two sections',
  simpsonRule: 'step ÷ 3 × (first + 4 × odd ones + 2 × even ones + last section)',
  averageRule: 'volume ÷ (length × width)',
};
