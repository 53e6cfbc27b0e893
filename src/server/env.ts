import type { Hono } from 'hono';
import type { RequestIdVariables } from 'hono/request-id';

/** What every request carries along. */
export type Env = { Variables: RequestIdVariables };
export type App = Hono<Env>;
