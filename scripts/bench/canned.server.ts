import { readFileSync } from 'node:fs';
import { serve } from '@hono/node-server';
import { Hono } from 'hono';

/**
 * What the real server is held against: the same library, a reply that was made beforehand (the file named first), and
 * the processor held for some milliseconds before each (the second word) as if something had been worked out.
 */
const [file, hold = '0'] = process.argv.slice(2);
const reply = file ? readFileSync(file, 'utf8') : 'hello';
const holdFor = Number(hold);

const app = new Hono();
app.post('/api/ask', async (c) => {
  await c.req.text();
  const start = performance.now();
  while (performance.now() - start < holdFor);
  return c.body(reply, 200, { 'Content-Type': 'application/json' });
});

const server = serve({ fetch: app.fetch, hostname: '127.0.0.1', port: Number(process.env.PORT ?? 0) }, ({ port }) => {
  process.stdout.write(`Canned replies on http://127.0.0.1:${port}\n`);
});
process.once('SIGTERM', () => {
  server.close();
  process.exit(0);
});
