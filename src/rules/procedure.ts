/** One entry of the checklist: a step, and the lift it is done for. */
export interface Entry {
  readonly id: string;
  readonly lift?: number;
}

/** What stands before the lifts, in order. */
const before = [
  'survey-and-mark',
  'order-and-check',
  'brief-crew',
  'traffic-control-up',
  'cut-and-clean',
  'sweep',
  'tack',
  'spread-premix',
  'windrow',
];
/** What stands after the lifts, in order. */
const after = ['final-roll', 'clean-up', 'traffic-control-down', 'record'];

/** Most lifts that a checklist is written out for. */
export const mostLifts = 60;

/**
 * The whole job in order. Every lift but the last is laid and rolled before the next; the last is the finish lift, rolled
 * by the final rolling. While the count is unknown each kind of lift stands once, without a number.
 * Throws RangeError for a count that is no whole number from 1 to `mostLifts`.
 */
export function sequence(liftCount?: number): Entry[] {
  const plain = (ids: readonly string[]): Entry[] => ids.map((id) => ({ id }));
  if (liftCount === undefined)
    return plain([...before, 'first-lift', 'roll-lift', 'next-lift', 'finish-lift', ...after]);
  if (!Number.isInteger(liftCount) || liftCount < 1 || liftCount > mostLifts) {
    throw new RangeError(`a patch has 1 to ${mostLifts} lifts, not ${liftCount}: give a whole number`);
  }
  const lifts: Entry[] = [];
  for (let lift = 1; lift < liftCount; lift++)
    lifts.push({ id: lift === 1 ? 'first-lift' : 'next-lift', lift }, { id: 'roll-lift', lift });
  return [...plain(before), ...lifts, { id: 'finish-lift', lift: liftCount }, ...plain(after)];
}

/** An entry as a job carries it: `sweep`, `roll-lift/2`. */
export const stageText = ({ id, lift }: Entry): string => (lift === undefined ? id : `${id}/${lift}`);

/** Reads a stage that a job carries. Undefined for one that names no step of the sequence. */
export function readStage(text: string | undefined): Entry | undefined {
  const parts = /^([a-z-]{1,40})(?:[/:]([0-9]{1,2}))?$/.exec(text ?? '');
  if (!parts) return undefined;
  const [, id, lift] = parts;
  if (!sequence().some((entry) => entry.id === id)) return undefined;
  return lift === undefined ? { id: id! } : { id: id!, lift: Number(lift) };
}

/** Where a stage stands in a sequence: by step and lift, else by step alone; -1 when it is not there. */
export function placeOf(stage: Entry, entries: readonly Entry[]): number {
  const exact = entries.findIndex((entry) => entry.id === stage.id && entry.lift === stage.lift);
  return exact >= 0 || stage.lift !== undefined ? exact : entries.findIndex((entry) => entry.id === stage.id);
}

/** What comes after a stage: an entry, the end of the job, or what must be known first to tell. */
export type Next = { readonly entry: Entry } | 'done' | 'needs-lift-count' | 'no-such-stage';

/**
 * The step after a stage. Without the number of lifts it cannot be told what follows the windrow or the rolling of a
 * lift; what has been laid is always rolled next, known count or not.
 */
export function nextAfter(stage: Entry, liftCount?: number): Next {
  if (liftCount === undefined) {
    if (stage.id === 'windrow' || stage.id === 'roll-lift') return 'needs-lift-count';
    if (stage.id === 'first-lift' || stage.id === 'next-lift') return { entry: { ...stage, id: 'roll-lift' } };
  }
  const entries = sequence(liftCount);
  const at = placeOf(stage, entries);
  if (at < 0) return 'no-such-stage';
  const entry = entries[at + 1];
  return entry ? { entry } : 'done';
}

/**
 * The entry that a word for a lift means: "second lift" of two is the finish lift. Undefined for a lift the patch has not.
 */
export function layingOf(lift: number, liftCount?: number): Entry | undefined {
  if (liftCount === undefined) return { id: lift === 1 ? 'first-lift' : 'next-lift', lift };
  if (lift < 1 || lift > liftCount) return undefined;
  if (lift === liftCount) return { id: 'finish-lift', lift };
  return { id: lift === 1 ? 'first-lift' : 'next-lift', lift };
}
