import type { Change } from '../ask/book/change.ts';
import { isRole } from '../ask/book/roles.ts';
import { dropSent, type KeptJob, keepJob, keptJob, unsentOf } from './book-kept.ts';

/** How a turn of sending and fetching ended. */
export type Outcome =
  | { readonly state: 'whole' | 'no-signal' | 'revoked' | 'unknown' | 'no-room' }
  | { readonly state: 'refused'; readonly why: string };

/** Most changes, and characters of them, that are sent at a time. */
const mostSent = 500;
const mostLong = 800_000;
/** Changes that the server hands over at a time. */
const page = 1000;
/** A signal that takes longer than this is none. */
const patience = 20_000;

/** Changes the server will not take: they stay on the phone, and are not sent again while this window stands. */
const refused = new Set<string>();

const running = new Map<string, Promise<Outcome>>();

/** Sends what was written here and fetches what others wrote, until both have all of it. One turn at a time for each job. */
export function syncJob(key: string): Promise<Outcome> {
  const before = running.get(key);
  if (before) return before;
  const turn = sync(key).finally(() => running.delete(key));
  running.set(key, turn);
  return turn;
}

async function sync(key: string): Promise<Outcome> {
  let why: string | undefined;
  let room = true;
  for (;;) {
    const job = await keptJob(key);
    const waiting = (await unsentOf(key)).filter(({ id }) => !refused.has(id));
    const sent = part(waiting);
    const answer = await post(key, {
      changes: sent,
      after: job?.server.length ?? 0,
      ...(job?.begun ? { begin: true } : {}),
    });
    if (!answer || answer.status >= 500) return { state: 'no-signal' };
    if (answer.status === 410) {
      if (job) await keepJob({ ...job, revoked: true });
      return { state: 'revoked' };
    }
    if (answer.status === 404) return { state: 'unknown' };
    const told: unknown = await answer.json().catch(() => undefined);
    if (!answer.ok) {
      const { at, text } = refusal(told);
      // Where the server does not say which, none of these is sent again; those that it names are left out.
      for (const change of at.length > 0 ? at.flatMap((place) => sent[place] ?? []) : sent) refused.add(change.id);
      if (sent.length === 0) return { state: 'refused', why: text };
      why = text;
      continue;
    }
    const { role, changes } = told as { role: string; changes: Change[] };
    const next = joined(key, job, isRole(role) ? role : 'look', changes);
    // First what came, then away with what went: a phone that dies between the two sends it once more, which does no harm.
    if (changes.length > 0 || changed(job, next)) room = (await keepJob(next)) && room;
    const here = new Set(next.server.map(({ id }) => id));
    await dropSent(
      key,
      (await unsentOf(key)).map(({ id }) => id).filter((id) => here.has(id)),
    );
    if (changes.length < page && waiting.every(({ id }) => here.has(id)))
      return why === undefined ? { state: room ? 'whole' : 'no-room' } : { state: 'refused', why };
  }
}

/** What the server said, put behind what it had said before. */
function joined(key: string, job: KeptJob | undefined, role: KeptJob['role'], changes: readonly Change[]): KeptJob {
  return { key, role, server: [...(job?.server ?? []), ...changes], at: job?.at ?? Date.now() };
}

const changed = (job: KeptJob | undefined, next: KeptJob): boolean =>
  !job || job.role !== next.role || job.begun !== undefined || job.revoked !== undefined;

function part(waiting: readonly Change[]): Change[] {
  const some: Change[] = [];
  let long = 0;
  for (const change of waiting.slice(0, mostSent)) {
    long += JSON.stringify(change).length;
    if (some.length > 0 && long > mostLong) break;
    some.push(change);
  }
  return some;
}

async function post(key: string, body: unknown): Promise<Response | undefined> {
  const giveUp = new AbortController();
  const timer = setTimeout(() => giveUp.abort(), patience);
  try {
    return await fetch(`/api/jobs/${key}/sync`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(body),
      signal: giveUp.signal,
    });
  } catch {
    return undefined;
  } finally {
    clearTimeout(timer);
  }
}

/** Which of the changes sent are refused, by their place, and why. */
function refusal(told: unknown): { at: number[]; text: string } {
  const { detail, errors } = (typeof told === 'object' && told !== null ? told : {}) as Record<string, unknown>;
  const list = (Array.isArray(errors) ? errors : []) as { detail?: string; pointer?: string }[];
  const at = list.flatMap(({ pointer = '' }) => {
    const place = /^#\/changes\/(\d{1,4})/.exec(pointer)?.[1];
    return place === undefined ? [] : [Number(place)];
  });
  return { at, text: list[0]?.detail ?? (typeof detail === 'string' ? detail : '') };
}
