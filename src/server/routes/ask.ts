import { jsonIn } from '../../rules/json.ts';
import type { Doors } from '../doors.ts';
import type { App } from '../env.ts';
import { limitBody } from '../limit-body.ts';
import { bodyLimit } from '../limits.ts';
import { onlyThese } from '../methods.ts';
import { problem } from '../problem.ts';
import { requestSchema } from '../schema/request.ts';
import { en } from '../wording/en.ts';
import { wrongs } from '../wrongs.ts';

const path = '/api/ask';

/** POST /api/ask: a request as JSON, the reply as JSON. */
export function askRoute(app: App, { ask }: Doors): void {
  app.post(
    path,
    async (c, next) =>
      isJson(c.req.header('Content-Type')) ? next() : problem(c, 415, en.detail[415]('application/json')),
    limitBody(bodyLimit, (c) => problem(c, 413, en.detail[413](bodyLimit))),
    async (c) => {
      const body = jsonIn(await c.req.text());
      if (!body) return problem(c, 400, en.detail[400]);
      const request = requestSchema.safeParse(body.json);
      if (!request.success) return problem(c, 422, en.detail[422], wrongs(request.error));
      return c.json(ask(request.data));
    },
  );
  onlyThese(app, path, ['POST']);
}

function isJson(contentType: string | undefined): boolean {
  return contentType?.split(';', 1)[0]?.trim().toLowerCase() === 'application/json';
}
