import { type Engine, engine as shipped } from './engine.ts';
import { emptyJob } from './job.ts';
import type { Job, Reason, Reply } from './reply.ts';

/** A reply with all its lists, empty. */
export const blank = {
  values: [],
  checks: [],
  steps: [],
  given: [],
  kept: [],
  ignored: [],
  assumed: [],
  working: [],
  causes: [],
  cards: [],
  layout: [],
  load: [],
  cautions: [],
  next: [],
} as const;

/** A reply that answers nothing and says why. */
export function refuse(reason: Reason, text: string, job: Job = emptyJob, { knowledge }: Engine = shipped): Reply {
  return { ...blank, kind: 'unknown', topic: reason, reason, text, rules: { version: knowledge.version }, job };
}
