import { Hono } from 'hono';
import { compress } from 'hono/compress';
import { requestId } from 'hono/request-id';
import type { Reply, Request } from '../ask/reply.ts';
import { knowledge } from '../rules/knowledge.ts';
import type { App, Env } from './env.ts';
import { strictHeaders } from './headers.ts';
import { answerFault, answerNothingHere } from './problem.ts';
import { askRoute } from './routes/ask.ts';
import { assetRoutes } from './routes/assets.ts';
import { healthRoute } from './routes/health.ts';
import { openApiRoute } from './routes/openapi.ts';
import { pageRoute } from './routes/page.ts';

/** What the server needs of the world: an engine that answers, and somewhere to tell of a fault. */
export interface Needs {
  readonly ask: (request: Request) => Reply;
  /** Version of the rules that answer, as the foot of the page and the health route show it. */
  readonly version?: string;
  /** Told of every fault of ours, in one line, without what the asker typed. */
  readonly report?: (line: string) => void;
}

/** The same with nothing left open. */
export type Doors = Required<Needs>;

/** The whole server without a socket: give it requests, it answers them. Holds no state between two requests. */
export function createApp(needs: Needs): App {
  const doors: Doors = { version: knowledge.version, report: () => {}, ...needs };
  const app: App = new Hono<Env>();
  app.use(requestId({ limitLength: 100 }), strictHeaders, compress());
  pageRoute(app, doors);
  askRoute(app, doors);
  healthRoute(app, doors);
  openApiRoute(app, doors);
  assetRoutes(app);
  app.notFound((c) => answerNothingHere(c));
  app.onError((fault, c) => answerFault(fault, c, doors.report));
  return app;
}
