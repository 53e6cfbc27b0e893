import type { Book } from '../../ask/book/book.ts';
import { type Change, stampAfter } from '../../ask/book/change.ts';
import { isRole, type Role } from '../../ask/book/roles.ts';
import { hashOfKey, isKey, newKey } from '../quiz-class/keys.ts';
import type { Receipt, Store } from '../store/store.ts';

/** A job as one of its links opens it. */
export interface OpenedJob {
  readonly log: string;
  readonly role: Role;
  /** The link it was opened by. */
  readonly link: string;
}

/** Changes read at a time, and most of one job: a log that a link could fill without end is closed before that. */
const page = 1000;
export const mostChanges = 50_000;

/** Starts a job; resolves, once it is on disk, to the key that edits it. */
export async function startJob(store: Store, changes: readonly Change[], at: string): Promise<string> {
  const log = `job/${newKey()}`;
  await store.append(
    log,
    changes.map((change) => entryOf(change, at)),
  );
  return addKey(store, log, 'edit', at);
}

/** Starts the job that a phone has begun without signal, under the key it made for it; a job that is there already stays as it is. */
export async function begin(store: Store, key: string, at: string): Promise<void> {
  const hash = hashOfKey(key);
  if (await store.link(hash)) return;
  try {
    await store.addLink({ hash, id: hash.slice(0, 12), log: `job/${newKey()}`, role: 'edit', madeAt: at });
  } catch (fault) {
    // Sent twice at once: the other one was first.
    if (!(await store.link(hash))) throw fault;
  }
}

/** A key of its own for a role; it is kept as a hash alone, so it is told only this once. */
export async function addKey(store: Store, log: string, role: Role, at: string): Promise<string> {
  const key = newKey();
  const hash = hashOfKey(key);
  await store.addLink({ hash, id: hash.slice(0, 12), log, role, madeAt: at });
  return key;
}

/** The job that a key opens; `revoked` where its link was closed, nothing where there never was one. */
export async function openJob(store: Store, key: string): Promise<OpenedJob | 'revoked' | undefined> {
  const link = isKey(key) ? await store.link(hashOfKey(key)) : undefined;
  if (!link?.log.startsWith('job/') || !isRole(link.role)) return undefined;
  return link.revokedAt === undefined ? { log: link.log, role: link.role, link: link.id } : 'revoked';
}

/** All changes of a job, in the order the server took them. */
export async function changesOf(store: Store, log: string): Promise<Change[]> {
  const changes: Change[] = [];
  for (;;) {
    const entries = await store.read(log, changes.length, page);
    for (const { body } of entries) changes.push(body as Change);
    if (entries.length < page) return changes;
  }
}

/** Keeps changes; resolves when they are on disk. Undefined when the job is full. */
export async function keep(
  store: Store,
  log: string,
  changes: readonly Change[],
  at: string,
): Promise<Receipt | undefined> {
  const entries = changes.map((change) => entryOf(change, at));
  const receipt = await store.append(log, entries, mostChanges);
  return receipt.full ? undefined : receipt;
}

const entryOf = (change: Change, at: string) => ({ id: change.id, body: change, at });

const device = newKey()
  .toLowerCase()
  .replace(/[^a-z0-9]/g, '')
  .slice(0, 8)
  .padEnd(4, '0');
let last: string | undefined;

/** A stamp for a change that is made on the server itself: after all the book holds, and after the last one made here. */
export function stampNow({ last: seen }: Pick<Book, 'last'>): string {
  const latest = last === undefined || (seen !== undefined && seen > last) ? seen : last;
  last = stampAfter(latest, Date.now(), device);
  return last;
}
