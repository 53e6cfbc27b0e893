import type { Doors } from '../doors.ts';
import type { App } from '../env.ts';
import { onlyThese } from '../methods.ts';

const path = '/openapi.json';

/** GET /openapi.json: what the API takes and gives. Loaded when it is asked for: no question needs the schema of a reply. */
export function openApiRoute(app: App, { ask }: Doors): void {
  let document: object | undefined;
  app.get(path, async (c) => {
    document ??= (await import('../openapi.ts')).openApi(ask);
    return c.json(document);
  });
  onlyThese(app, path, ['GET']);
}
