import type { Context } from 'hono';
import type { App, Env } from './env.ts';
import { problem } from './problem.ts';
import { en } from './wording/en.ts';

type Method = 'GET' | 'POST';

/** Closes an address: OPTIONS tells which methods it takes, any other one is refused with the same list. Call it after its routes. */
export function onlyThese(app: App, path: string, methods: readonly Method[]): void {
  const allow = [...methods, ...(methods.includes('GET') ? ['HEAD'] : []), 'OPTIONS'].join(', ');
  app.options(path, (c) => c.body(null, 204, { Allow: allow }));
  app.all(path, (c: Context<Env>) => {
    c.header('Allow', allow);
    return problem(c, 405, en.detail[405](allow));
  });
}
