/** Figures of a bench, by name. */
export type Figures = Record<string, { readonly value: number; readonly unit: string }>;

export interface Rounds {
  /** Rounds that are run and thrown away: the first ones pay for compiling. */
  readonly warmUp: number;
  readonly rounds: number;
}

/**
 * Times some pieces of work against each other, in milliseconds: in every round each of them once, the order turned from
 * round to round, so that a slow moment of the machine falls on all alike.
 */
export async function timeEach<Name extends string>(
  work: Readonly<Record<Name, (round: number) => unknown>>,
  { warmUp, rounds }: Rounds,
): Promise<Record<Name, number[]>> {
  const names = Object.keys(work) as Name[];
  const times = Object.fromEntries(names.map((name) => [name, [] as number[]])) as Record<Name, number[]>;
  for (let round = -warmUp; round < rounds; round++) {
    for (let turn = 0; turn < names.length; turn++) {
      const name = names[(turn + round + warmUp) % names.length]!;
      const start = performance.now();
      // Awaited only where there is something to wait for: an await of its own costs more than a short piece of work.
      const result = work[name](round + warmUp);
      if (result instanceof Promise) await result;
      const time = performance.now() - start;
      if (round >= 0) times[name].push(time);
    }
  }
  return times;
}

/** The figure that a share of all others does not exceed: 0.5 is the median. NaN of nothing. */
export function quantile(figures: readonly number[], share: number): number {
  const sorted = [...figures].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

/** The middle one. */
export const median = (figures: readonly number[]): number => quantile(figures, 0.5);
/** All but one in a hundred are quicker. */
export const p99 = (figures: readonly number[]): number => quantile(figures, 0.99);

/** A figure in milliseconds. */
export const ms = (value: number): { value: number; unit: string } => ({ value, unit: 'ms' });
