import type { MiddlewareHandler } from 'hono';
import type { Reply, Request } from '../ask/reply.ts';
import type { Env } from './env.ts';
import type { Store } from './store/store.ts';

/** What the server needs of the world: an engine that answers, and somewhere to tell of a fault. */
export interface Needs {
  readonly ask: (request: Request) => Reply;
  /** Version of the rules that answer, as the foot of the page and the health route show it. */
  readonly version?: string;
  /** Told of every fault of ours, in one line, without what the asker typed. */
  readonly report?: (line: string) => void;
  /** What crews share. Called only when something shared is wanted: no question needs a store. Rejects with a `StoreFault`. */
  readonly store?: () => Promise<Store>;
  /** Turns requests away before anything else looks at them. */
  readonly gate?: MiddlewareHandler<Env>;
}

/** The same with nothing left open. */
export type Doors = Required<Omit<Needs, 'gate'>>;
