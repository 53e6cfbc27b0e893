import fc from 'fast-check';
import { ask } from '../../src/ask/ask.ts';
import { bent } from './bent.ts';
import { questions } from './typed.ts';

/** Jobs as they come of talks, and what somebody could have made of them. */
const real: readonly unknown[] = [
  'how many tons for 300 x 12 ft at 2 in',
  'readings every 10 ft: 1 1 1 3 1 1 in across 12 ft',
  'add this patch to the job: 300 x 12 ft at 2 in',
  'taper for 55 mph, 12 ft lane, rural, flaggers',
  'tack for 200 sy at 0.05 residual, emulsion at 140 F',
  ...questions.slice(0, 20),
].map((question) => JSON.parse(JSON.stringify(ask({ question }).job)));

export const forgedJobs: fc.Arbitrary<unknown> = fc.constantFrom(...real).chain(bent);
