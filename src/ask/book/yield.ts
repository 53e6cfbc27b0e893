import { toBase } from '../../calc/quantity.ts';
import type { Solution } from '../../calc/solve.ts';

/** What the mix laid so far tells about the rest of a patch, in base units. */
export interface YieldCheck {
  /** Average depth of what is down, and the one meant. */
  readonly depth: number;
  readonly meant: number;
  /** Depth laid over depth meant: 1.1 is a tenth too thick. */
  readonly ratio: number;
  readonly placed: number;
  /** Tons figured for the whole patch, and what it takes if the rest is laid as the first part was. */
  readonly figured: number;
  readonly atYield?: number;
  /** Still to come by the figure, and at this yield. */
  readonly left: number;
  readonly leftAtYield?: number;
  /** Tons that will be lacking at the end, below nothing when some stay over; only when the length laid is known. */
  readonly short?: number;
  readonly judged: 'over' | 'under' | 'right';
}

/** How far the average depth may be off before it is told as over or under: a sixteenth of an inch, what a tape reads. */
const readable = toBase(1 / 16, 'in');

/** The yield check of a patch from what was worked out of it. Undefined while tons down, depth or tons needed are not known. */
export function yieldCheck(solved: Solution): YieldCheck | undefined {
  const [placed, depth, meant, figured, atYield, leftAtYield] = [
    'placed-mass',
    'placed-depth',
    'patch-depth',
    'premix-mass',
    'mass-at-yield',
    'left-at-yield',
  ].map((id) => solved.get(id)?.value);
  if (!placed || depth === undefined || !meant || !figured) return undefined;
  return {
    depth,
    meant,
    ratio: depth / meant,
    placed,
    figured,
    left: Math.max(0, figured - placed),
    ...(atYield === undefined || leftAtYield === undefined
      ? {}
      : { atYield, leftAtYield: Math.max(0, leftAtYield), short: atYield - figured }),
    judged: Math.abs(depth - meant) <= readable ? 'right' : depth > meant ? 'over' : 'under',
  };
}
