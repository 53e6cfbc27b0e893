import type { Doors } from '../doors.ts';
import type { App } from '../env.ts';
import { onlyThese } from '../methods.ts';
import { openApi } from '../openapi.ts';

const path = '/openapi.json';

/** GET /openapi.json: what the API takes and gives. */
export function openApiRoute(app: App, { ask }: Doors): void {
  let document: ReturnType<typeof openApi> | undefined;
  app.get(path, async (c) => {
    document ??= openApi(ask);
    return c.json(await document);
  });
  onlyThese(app, path, ['GET']);
}
