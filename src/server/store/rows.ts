import type { Link } from './store.ts';

/** A link's row, its log by name. */
export interface LinkRow {
  readonly hash: string;
  readonly id: string;
  readonly log: string;
  readonly role: string;
  readonly made_at: string;
  readonly revoked_at: string | null;
}

export function linkFrom({ hash, id, log, role, made_at, revoked_at }: LinkRow): Link {
  return { hash, id, log, role, madeAt: made_at, ...(revoked_at === null ? {} : { revokedAt: revoked_at }) };
}
