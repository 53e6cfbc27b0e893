/** What each address may do in a minute, counted here and, where several processes serve one address, by all of them together. */
export interface Allowance {
  /** Counts one request of an address: 0 when it may go on, else the seconds until it may come back. */
  take(address: string, now: number): number;
  /** What was counted since the last call, to be added up with what other processes counted. */
  news(now: number): Counts;
  /** Takes in what all processes together have counted in the running minute. */
  hear(all: Counts): void;
}

/** Requests by address within one minute, which is numbered from 1970. */
export interface Counts {
  readonly minute: number;
  readonly by: readonly (readonly [address: string, count: number])[];
}

const minuteMs = 60_000;
/** Addresses that are kept apart in one minute; those beyond share one count. */
const mostAddresses = 50_000;
const everybodyElse = 'more';

/** An allowance of so many requests a minute for each address. Holds nothing of the minute before. */
export function allowanceOf(most: number): Allowance {
  let minute = -1;
  let fresh = new Map<string, number>();
  let known = new Map<string, number>();
  const turn = (to: number): void => {
    if (to === minute) return;
    minute = to;
    fresh = new Map();
    known = new Map();
  };
  const bucketOf = (address: string): string =>
    fresh.has(address) || known.has(address) || fresh.size + known.size < mostAddresses ? address : everybodyElse;
  return {
    take(address, now) {
      turn(Math.floor(now / minuteMs));
      const bucket = bucketOf(address);
      const counted = (fresh.get(bucket) ?? 0) + (known.get(bucket) ?? 0);
      if (counted >= most) return Math.ceil(((minute + 1) * minuteMs - now) / 1000);
      fresh.set(bucket, (fresh.get(bucket) ?? 0) + 1);
      return 0;
    },
    news(now) {
      turn(Math.floor(now / minuteMs));
      const by = [...fresh];
      for (const [address, count] of by) known.set(address, (known.get(address) ?? 0) + count);
      fresh = new Map();
      return { minute, by };
    },
    hear(all) {
      if (all.minute !== minute) return;
      for (const [address, count] of all.by) known.set(address, Math.max(count, known.get(address) ?? 0));
    },
  };
}

/** Adds up what the processes told of one minute; gives the sums of the addresses that were named. */
export function adderOf(): (told: Counts) => Counts {
  let minute = -1;
  let sums = new Map<string, number>();
  return (told) => {
    if (told.minute > minute) {
      minute = told.minute;
      sums = new Map();
    }
    if (told.minute < minute) return { minute: told.minute, by: [] };
    const by = told.by.map(([address, count]) => [address, (sums.get(address) ?? 0) + count] as const);
    for (const [address, count] of by) sums.set(address, count);
    return { minute, by };
  };
}
