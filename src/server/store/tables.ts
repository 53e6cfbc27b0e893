import type { Generated } from 'kysely';

/** The tables, as both engines have them. Times are ISO texts and bodies JSON texts, so that a row means the same in both. */
export interface Tables {
  log: {
    key: Generated<number>;
    name: string;
    kind: string;
    length: number;
    started_at: string;
  };
  entry: {
    log: number;
    place: number;
    id: string;
    body: string;
    at: string;
  };
  link: {
    hash: string;
    id: string;
    log: number;
    role: string;
    made_at: string;
    revoked_at: string | null;
  };
}

export type EngineName = 'sqlite' | 'postgres';
