import type { HttpBindings } from '@hono/node-server';
import type { Context, MiddlewareHandler } from 'hono';
import type { Allowance } from './allowance.ts';
import type { Env } from './env.ts';
import { problem } from './problem.ts';
import { en } from './wording/en.ts';

/**
 * Refuses an address that has used up its allowance, with 429 and when to come back. Whether the server runs can always be
 * asked. Behind a proxy, `hops` of them, the address is the one that the outermost of ours wrote down.
 */
export function limitRate(allowance: Allowance, hops: number): MiddlewareHandler<Env> {
  return async (c, next) => {
    const address = c.req.path === '/health' ? undefined : addressOf(c, hops);
    const wait = address === undefined ? 0 : allowance.take(address, Date.now());
    if (wait === 0) return next();
    c.header('Retry-After', String(wait));
    return problem(c, 429, en.detail[429](wait));
  };
}

function addressOf(c: Context<Env>, hops: number): string | undefined {
  const { incoming } = (c.env ?? {}) as Partial<HttpBindings>;
  const forwarded = hops > 0 ? (c.req.header('X-Forwarded-For') ?? '').split(',').at(-hops)?.trim() : undefined;
  const address = forwarded || incoming?.socket.remoteAddress;
  return address && networkOf(address);
}

/** An IPv6 network is one address: whoever has one has as many addresses as there are drops of water. */
export function networkOf(address: string): string {
  if (!address.includes(':')) return address;
  const [mapped] = /\d+\.\d+\.\d+\.\d+$/.exec(address) ?? [];
  if (mapped) return mapped;
  const [head = ''] = address.split('%');
  const [front = '', back] = head.split('::');
  const first = front.split(':').filter(Boolean);
  const last = back === undefined ? [] : back.split(':').filter(Boolean);
  const all = [...first, ...Array.from({ length: Math.max(0, 8 - first.length - last.length) }, () => '0'), ...last];
  return all
    .slice(0, 4)
    .map((part) => Number.parseInt(part, 16).toString(16))
    .join(':');
}
