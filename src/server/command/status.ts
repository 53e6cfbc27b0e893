import type { Reason, Reply } from '../../ask/reply.ts';

const outOfRange: readonly (Reason | undefined)[] = ['out-of-range', 'conflict', 'unit-wrong'];

/** Exit status of a reply: 0 answered, 3 one more thing is needed, 4 out of range or figures that clash, 5 no rule on it. */
export function statusOf({ kind, reason }: Reply): number {
  if (kind !== 'clarify' && kind !== 'unknown') return 0;
  if (outOfRange.includes(reason)) return 4;
  return kind === 'clarify' ? 3 : 5;
}
