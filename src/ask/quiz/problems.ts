import type { Problem } from './problem.ts';
import { liftProblems } from './problems-lifts.ts';
import { mixProblems } from './problems-mix.ts';
import { rollingProblems } from './problems-rolling.ts';
import { tackProblems } from './problems-tack.ts';
import { trafficProblems } from './problems-traffic.ts';

/** Every problem in figures. */
export const problems: readonly Problem[] = [
  ...mixProblems,
  ...liftProblems,
  ...rollingProblems,
  ...tackProblems,
  ...trafficProblems,
];
