import { layoutFor, planOf } from '../../rules/layout.ts';
import { whatFollows } from '../../rules/start.ts';
import type { Engine } from '../engine.ts';
import { knownFrom } from '../facts.ts';
import type { UnitSystem } from '../reply.ts';
import { type Zone, zoneOf } from '../zone.ts';
import type { PatchTotals, Totals } from './totals.ts';

/** The traffic layout of a job, for one of its patches. */
export interface JobLayout {
  readonly patch: PatchTotals;
  readonly zone: Zone;
}

/**
 * The layout for the longest patch that is still to be laid, else the longest of all: the one that was told of the job,
 * else one lane closed with flaggers. Undefined until speed and road are told.
 */
export function layoutOfJob(engine: Engine, { patches }: Totals, system: UnitSystem): JobLayout | undefined {
  const { knowledge } = engine;
  const long = ({ solved }: PatchTotals): number => solved.get('patch-length')?.value ?? 0;
  const known = patches.filter((each) => long(each) > 0);
  const open = known.filter(({ patch }) => !patch.done);
  const [patch] = (open.length > 0 ? open : known).sort((a, b) => long(b) - long(a));
  if (!patch) return undefined;
  const solved = whatFollows(knowledge, knownFrom(patch.facts));
  const kind = (['lane-closed', 'shoulder', 'flaggers'] as const).find((each) => solved.has(`layout-kind=${each}`));
  const quantity = planOf(kind ?? 'flaggers').length;
  if (!layoutFor(quantity, kind) || !solved.has(quantity)) return undefined;
  const zone = zoneOf(quantity, {
    knowledge,
    solved,
    unit: (id) => knowledge.quantities.get(id)!.units[system],
    isGiven: (id) => patch.facts.some((fact) => fact.quantity === id),
  });
  return zone && { patch, zone };
}
