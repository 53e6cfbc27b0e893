import { judgeLimit } from '../../rules/judge.ts';
import { whatFollows } from '../../rules/start.ts';
import type { Engine } from '../engine.ts';
import { type Fact, knownFrom } from '../facts.ts';
import type { WorkOrder } from './fields.ts';
import type { Patch, Sheet } from './sheet.ts';

/** A patch with all that is known of it. */
interface Placed {
  readonly patch: Patch;
  readonly facts: readonly Fact[];
}

/**
 * The patches in the order they are laid, each group along the road the way the crew goes. By lane: one lane after the
 * other, as their names sort, those without one last. By urgency: a drop-off that cannot be left, then one that is
 * flagged, then the rest; what is to be drained, or seen by an engineer, before any mix goes on it comes last.
 */
export function inWorkOrder<T extends Placed>(engine: Engine, { order }: Sheet, patches: readonly T[]): T[] {
  const key = keys[order];
  if (!key) return [...patches];
  return patches
    .map((each, i) => ({ each, i, key: key(each, engine) }))
    .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : a.i - b.i))
    .map(({ each }) => each);
}

const last = '\uffff';

const keys: Readonly<Record<WorkOrder, ((each: Placed, engine: Engine) => string) | undefined>> = {
  road: undefined,
  lane: ({ patch }) => patch.lane?.trim().toLowerCase() || last,
  urgent: (each, engine) => String(urgencyOf(each, engine)),
};

const notReady = new Set(['fix-drainage-first', 'engineer']);

function urgencyOf({ patch, facts }: Placed, { knowledge }: Engine): number {
  if (patch.repair !== undefined && notReady.has(patch.repair)) return 3;
  const rule = knowledge.limits.get('drop-off');
  const drop = facts.filter(({ quantity }) => quantity === rule?.on.id);
  // Most patches have none.
  if (!rule || drop.length === 0) return 2;
  const { status } = judgeLimit(rule, whatFollows(knowledge, knownFrom(drop)));
  return status === 'stop' ? 0 : status === 'caution' ? 1 : 2;
}
