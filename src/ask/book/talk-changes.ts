import { jsonIn } from '../../rules/json.ts';
import { engine } from '../engine.ts';
import { readJob } from '../job.ts';
import type { Job, JobFact, TalkPatch } from '../reply.ts';
import { fold, setting } from './book.ts';
import type { Cell, Change } from './change.ts';
import { newLine } from './fields.ts';
import { nextLabel, sheetOf } from './sheet.ts';
import { isOfPatch } from './talk-book.ts';

/**
 * What a conversation knows of a job, as changes of a job book: facts of the whole job, its patches, and what is down on
 * them. Where it has put no patch on a job, the one that it was about is the patch.
 */
export function talkChanges(text: string, stamp: () => string, onto: readonly Change[] = []): Change[] {
  const job = talkJob(text);
  if (!job) return [];
  const changes: Change[] = [];
  const put = (line: string, set: Record<string, Cell>, id: string): void => {
    if (Object.keys(set).length > 0) changes.push(setting(fold([...onto, ...changes]), line, set, { stamp: id }));
  };
  const taken = new Set(sheetOf(fold(onto), engine.knowledge).patches.map(({ label }) => label));
  let next = Number(nextLabel(sheetOf(fold(onto), engine.knowledge)));
  put('job', cells(job.facts.filter(({ quantity }) => !isOfPatch(engine.knowledge, quantity))), stamp());
  for (const { label, facts, laid, laidTo, done } of talkPatches(job)) {
    const id = stamp();
    const line = newLine('patch', id);
    const name = label !== '' && !taken.has(label) ? label : String(next++);
    put(line, { label: name, ...cells(facts), ...(done ? { done } : {}) }, id);
    if (!laid && !laidTo) continue;
    const load = stamp();
    put(
      newLine('load', load),
      { patch: line, ...(laid ? { 'placed-mass': laid } : {}), ...(laidTo ? { 'placed-length': laidTo } : {}) },
      load,
    );
  }
  return changes;
}

/** The patches of a talk: those it has put on a job, else the one it is about. */
export function talkPatches(job: Job): readonly TalkPatch[] {
  if (job.book && job.book.patches.length > 0) return job.book.patches;
  const own = job.facts.filter((fact) => isPatchField(fact));
  return own.some((fact) => 'unit' in fact) ? [{ label: '', facts: own }] : [];
}

/** Of the figures of a patch those that stand on its line: what is down on it is a load. */
const isPatchField = ({ quantity }: JobFact): boolean =>
  isOfPatch(engine.knowledge, quantity) && !quantity.startsWith('placed-') && quantity !== 'loads-placed';

/** The job of a talk, as a form carried it; undefined for one that is damaged. */
export const talkJob = (text: string): Job | undefined => (text === '' ? undefined : readJob(jsonIn(text)?.json));

/** Facts as the fields of a line. */
export const cells = (facts: readonly JobFact[]): Record<string, Cell> =>
  Object.fromEntries(
    facts.map((fact) => [fact.quantity, 'unit' in fact ? { number: fact.number, unit: fact.unit } : fact.choice]),
  );
