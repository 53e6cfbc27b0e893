import { icon, quizStylesheet, stylesheet } from '../dress.ts';
import type { App } from '../env.ts';
import { onlyThese } from '../methods.ts';

const yearLong = 'public, max-age=31536000, immutable';
const brief = 'public, max-age=300';

/** GET /assets/…: the stylesheet and the mark of the page, read once at start. */
export function assetRoutes(app: App): void {
  for (const { path, hash, type, body } of [stylesheet, quizStylesheet, icon]) {
    app.get(path, (c) => {
      const cache = c.req.query('v') === hash ? yearLong : brief;
      return c.body(body, 200, { 'Content-Type': type, 'Cache-Control': cache, ETag: `"${hash}"` });
    });
    onlyThese(app, path, ['GET']);
  }
}
