import type { Method } from './relation.ts';

/** A known figure, in base units. A range the asker gave and the band of a default are both `low` to `high`. */
export interface Known {
  readonly id: string;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  /** A default: used only where nothing surer leads there. */
  readonly assumed?: boolean;
  /** A default that gives way to anything worked out, on however many other defaults that rests. */
  readonly last?: boolean;
}

/** A figure with the way it was come by. */
export interface Solved {
  readonly id: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** The two ends counting only the ranges the asker gave, not the bands of defaults. */
  readonly saidLow: number;
  readonly saidHigh: number;
  /** Defaults this rests on. */
  readonly assumed: readonly string[];
  /** True when it rests on a default that has no band: then it contradicts nobody. */
  readonly soft: boolean;
  /** The relation that found it; absent for a figure that was given or assumed. */
  readonly by?: Method;
}

/** Facts by their ids, with all that follows from them. */
export interface Solution extends Iterable<readonly [id: string, fact: Solved]> {
  readonly get: (id: string) => Solved | undefined;
  readonly has: (id: string) => boolean;
}
