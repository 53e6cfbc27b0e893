import type { Reply, UnitSystem } from '../reply.ts';

/** One question and its answer, as a page shows them. */
export interface Entry {
  /** Its place in the conversation, from 1. */
  readonly number: number;
  readonly question: string;
  readonly units?: UnitSystem;
  readonly reply: Reply;
}
