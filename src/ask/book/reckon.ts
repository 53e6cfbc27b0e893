import { solver } from '../../calc/plan.ts';
import type { Solution } from '../../calc/solve.ts';
import { FileFault } from '../../rules/file-parts.ts';
import { startOf } from '../../rules/start.ts';
import { withAgency } from '../agency.ts';
import type { Engine } from '../engine.ts';
import { type Fact, knownFrom, merge } from '../facts.ts';

/** What is worked out for every patch. */
export const patchFigures = [
  'patch-area',
  'premix-mass',
  'premix-order',
  'tack-volume',
  'lift-count',
  'grading-time',
  'rolling-time-total',
  'placed-depth',
  'mass-at-yield',
  'left-at-yield',
  'zone-length',
  'device-count',
] as const;
export type PatchFigure = (typeof patchFigures)[number];

/** Works the figures of a set of facts, in base units. */
export type Reckon = (facts: readonly Fact[]) => Solution;

const made = new WeakMap<Engine, Reckon>();

/** The engine's own reckoning for the patches of a job; like sets of facts are worked along one way. */
export function reckoning(engine: Engine): Reckon {
  const before = made.get(engine);
  if (before) return before;
  const { knowledge } = engine;
  const solve = solver(knowledge.network, [...patchFigures, 'truck-payload'], (facts) => startOf(knowledge, facts));
  const reckon: Reckon = (facts) => solve(knownFrom(facts));
  made.set(engine, reckon);
  return reckon;
}

/** The engine under an agency's rules, where the job has some; a fault in them is told, never passed over. */
export function engineFor(engine: Engine, rules: unknown): Engine | FileFault {
  return rules === undefined ? engine : withAgency(engine, rules);
}

export { FileFault };

/** Facts of the job under those of the patch. */
export const factsFor = (job: readonly Fact[], own: readonly Fact[]): Fact[] => merge(job, own);
