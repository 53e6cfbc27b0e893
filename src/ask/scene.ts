import type { Engine } from './engine.ts';
import type { Voice } from './judging.ts';
import type { Job, Request } from './reply.ts';
import type { Understanding } from './understand.ts';

/** All that an answer is made from. */
export interface Scene {
  readonly engine: Engine;
  readonly understood: Understanding;
  readonly voice: Voice;
  /** The job as it goes back, facts and goal of this turn included. */
  readonly job: Job;
  readonly request: Request;
}
