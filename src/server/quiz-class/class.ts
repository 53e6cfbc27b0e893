import type { QuizSet } from '../../ask/quiz/build.ts';
import type { ClassResult } from '../../ask/quiz/class-results.ts';
import type { Mark } from '../../ask/quiz/mark.ts';
import type { Store } from '../store/store.ts';
import { hashOfKey, isKey, newKey } from './keys.ts';

/** Who opens a class: the trainer sees, hands out and erases; the crew takes the set and nothing else. */
export type ClassRole = 'trainer' | 'crew';

/** A class as one of its keys opens it. */
export interface OpenedClass {
  readonly log: string;
  readonly role: ClassRole;
  /** The set as it was given out: rules that change later change nothing in it. */
  readonly set: QuizSet;
  readonly startedAt: string;
}

/** Kept of a class: the set, the key of the crew so that the trainer can hand it on, and results. */
type Body =
  | { readonly kind: 'set'; readonly set: QuizSet; readonly crewKey: string }
  | { readonly kind: 'result'; readonly who: string; readonly marks: readonly Mark[] };

const setEntry = 'set';
/** Results read at a time. */
const page = 500;
/** Most results of one class: a log that anybody with its key could fill without end is closed before that. */
export const mostResults = 2000;

/** Starts a class on a set; resolves, once it is on disk, to the key of its trainer. `at`: now, as ISO text. */
export async function startClass(store: Store, set: QuizSet, at: string): Promise<string> {
  const [id, trainer, crew] = [newKey(), newKey(), newKey()];
  const log = `class/${id}`;
  const body: Body = { kind: 'set', set, crewKey: crew };
  await store.append(log, [{ id: setEntry, body, at }]);
  await store.addLink({ hash: hashOfKey(trainer), id: 'trainer', log, role: 'trainer', madeAt: at });
  await store.addLink({ hash: hashOfKey(crew), id: 'crew', log, role: 'crew', madeAt: at });
  return trainer;
}

/** The class that a key opens; undefined for a key that opens none, or none any more. */
export async function openClass(
  store: Store,
  key: string,
): Promise<(OpenedClass & { readonly crewKey: string }) | undefined> {
  if (!isKey(key)) return undefined;
  const link = await store.link(hashOfKey(key));
  if (!link || link.revokedAt !== undefined || (link.role !== 'trainer' && link.role !== 'crew')) return undefined;
  const [first] = await store.read(link.log, 0, 1);
  const body = first?.body as Body | undefined;
  if (!first || body?.kind !== 'set') return undefined;
  return { log: link.log, role: link.role, set: body.set, crewKey: body.crewKey, startedAt: first.at };
}

/** Keeps a result. `id` names it, so that one sent twice is kept once. False when the class is full. */
export async function addResult(
  store: Store,
  { log }: OpenedClass,
  { id, who, marks, at }: ClassResult & { readonly id: string },
): Promise<boolean> {
  if ((await store.length(log)) > mostResults) return false;
  const body: Body = { kind: 'result', who, marks };
  await store.append(log, [{ id: `result-${id}`, body, at }]);
  return true;
}

/** Every result of a class, oldest first. */
export async function resultsOf(store: Store, { log }: OpenedClass): Promise<ClassResult[]> {
  const results: ClassResult[] = [];
  for (let after = 0; ; ) {
    const entries = await store.read(log, after, page);
    for (const { body, at } of entries as readonly { readonly body: Body; readonly at: string }[])
      if (body.kind === 'result') results.push({ who: body.who, marks: body.marks, at });
    const last = entries.at(-1);
    if (!last || entries.length < page) return results;
    after = last.place;
  }
}

/** Erases a class: its set, its results and its keys. */
export const eraseClass = (store: Store, { log }: OpenedClass): Promise<void> => store.erase(log);
