import type { Doors } from '../doors.ts';
import type { App } from '../env.ts';
import { onlyThese } from '../methods.ts';

/** GET /health: that the server answers, and with which rules. */
export function healthRoute(app: App, { version }: Doors): void {
  app.get('/health', (c) => c.json({ status: 'ok', rules: { version } }));
  onlyThese(app, '/health', ['GET']);
}
