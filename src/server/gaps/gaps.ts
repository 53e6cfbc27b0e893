import type { Gap } from '../../ask/gaps/group.ts';
import { sha256 } from '../hash.ts';
import { hashOfKey, isKey, newKey } from '../quiz-class/keys.ts';
import type { Store } from '../store/store.ts';

/** Where the questions are kept, and where the links of the keeper hang: the one is cleared, the other stays. */
const questions = 'gaps/questions';
const keeper = 'gaps/keeper';

/** Most questions that wait to be read: a log that anybody may write in is closed before it fills the disk. */
export const mostGaps = 5000;
const page = 1000;

/** Keeps a question that found no answer, once a day; false when too many wait already. */
export async function keepGap(store: Store, gap: Gap): Promise<boolean> {
  if ((await store.length(questions)) >= mostGaps) return false;
  // The day alone: no hour tells who it was.
  const at = `${gap.day}T00:00:00.000Z`;
  await store.append(questions, [
    { id: sha256(`${gap.day} ${gap.reason} ${gap.question}`).slice(0, 32), body: gap, at },
  ]);
  return true;
}

export async function gapsOf(store: Store): Promise<Gap[]> {
  const gaps: Gap[] = [];
  for (;;) {
    const entries = await store.read(questions, gaps.length, page);
    for (const { body } of entries) gaps.push(body as Gap);
    if (entries.length < page) return gaps;
  }
}

export const clearGaps = (store: Store): Promise<void> => store.erase(questions);

/** Makes a key for a keeper of the rules; it is told only this once. */
export async function addKeeper(store: Store, at: string): Promise<string> {
  const key = newKey();
  const hash = hashOfKey(key);
  await store.addLink({ hash, id: hash.slice(0, 12), log: keeper, role: 'keeper', madeAt: at });
  return key;
}

/** Takes all keys of keepers back. */
export async function revokeKeepers(store: Store, at: string): Promise<number> {
  const open = (await store.links(keeper)).filter(({ revokedAt }) => revokedAt === undefined);
  for (const { id } of open) await store.revoke(keeper, id, at);
  return open.length;
}

export async function isKeeper(store: Store, key: string): Promise<boolean> {
  const link = isKey(key) ? await store.link(hashOfKey(key)) : undefined;
  return link?.log === keeper && link.role === 'keeper' && link.revokedAt === undefined;
}
