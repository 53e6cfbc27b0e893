import type { Context, MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import type { Env } from './env.ts';

/**
 * Refuses a body of more than `most` bytes with what `refuse` answers. A declared length is taken at its word, for Node reads
 * no further than that; only a body of unknown length is counted, which makes a stream of it and costs more than an answer.
 */
export function limitBody(
  most: number,
  refuse: (c: Context<Env>) => Response | Promise<Response>,
): MiddlewareHandler<Env> {
  const counted = bodyLimit({ maxSize: most, onError: refuse });
  return async (c, next) => {
    const declared = c.req.header('Content-Length');
    if (declared === undefined || c.req.header('Transfer-Encoding') !== undefined) return counted(c, next);
    return Number(declared) > most ? refuse(c) : next();
  };
}
