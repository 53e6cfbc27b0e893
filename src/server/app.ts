import { Hono } from 'hono';
import { compress } from 'hono/compress';
import { requestId } from 'hono/request-id';
import { knowledge } from '../rules/knowledge.ts';
import type { Doors, Needs } from './doors.ts';
import type { App, Env } from './env.ts';
import { strictHeaders } from './headers.ts';
import { answerFault, answerNothingHere } from './problem.ts';
import { askRoute } from './routes/ask.ts';
import { assetRoutes } from './routes/assets.ts';
import { clientRoutes } from './routes/client.ts';
import { gapRoutes } from './routes/gaps.ts';
import { healthRoute } from './routes/health.ts';
import { jobRoutes } from './routes/job.ts';
import { jobApiRoute } from './routes/job-api.ts';
import { openApiRoute } from './routes/openapi.ts';
import { pageRoute } from './routes/page.ts';
import { quizRoutes } from './routes/quiz.ts';
import { referenceRoutes } from './routes/reference.ts';
import { StoreFault } from './store/fault.ts';

/** The whole server without a socket: give it requests, it answers them. Holds no state between two requests. */
export function createApp(needs: Needs): App {
  const doors: Doors = { version: knowledge.version, report: () => {}, store: noStore, ...needs };
  const app: App = new Hono<Env>();
  app.use(requestId({ limitLength: 100 }), strictHeaders, compress());
  pageRoute(app, doors);
  askRoute(app, doors);
  healthRoute(app, doors);
  openApiRoute(app, doors);
  quizRoutes(app, doors);
  jobRoutes(app, doors);
  gapRoutes(app, doors);
  jobApiRoute(app, doors);
  referenceRoutes(app, doors);
  assetRoutes(app);
  clientRoutes(app, doors);
  app.notFound((c) => answerNothingHere(c));
  app.onError((fault, c) => answerFault(fault, c, doors.report));
  return app;
}

const noStore = (): Promise<never> => Promise.reject(new StoreFault('none'));
