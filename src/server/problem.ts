import type { Context } from 'hono';
import { noticePage } from '../ask/views/notice.tsx';
import { dress } from './dress.ts';
import type { Env } from './env.ts';
import { describe } from './fault.ts';
import { StoreFault } from './store/fault.ts';
import { en } from './wording/en.ts';

export type Status = 400 | 403 | 404 | 405 | 410 | 413 | 415 | 422 | 429 | 500 | 503;

/** One thing wrong with a request, and where it stands in it (a JSON Pointer, as a fragment). */
export interface Wrong {
  readonly detail: string;
  readonly pointer: string;
}

/** An answer that says what is wrong and what to do about it, as RFC 9457 has it. */
export function problem(c: Context<Env>, status: Status, detail: string, errors?: readonly Wrong[]): Response {
  const body = { type: 'about:blank', title: en.title[status], status, detail, ...(errors ? { errors } : {}) };
  return c.body(JSON.stringify(body), status, {
    'Content-Type': 'application/problem+json',
    'Content-Language': 'en',
  });
}

/** The same for somebody at a browser: a page that says it. */
export function problemPage(c: Context<Env>, status: Status, detail: string): Response | Promise<Response> {
  return c.html(noticePage({ title: en.title[status], detail, dress }), status);
}

/** 404: a page for a browser, a problem for everything else. */
export function answerNothingHere(c: Context<Env>): Response | Promise<Response> {
  return wantsPage(c) ? problemPage(c, 404, en.detail[404]) : problem(c, 404, en.detail[404]);
}

/** 500: says that it is our fault and nothing of what happened inside; the report names the kind of fault and its place. */
export function answerFault(
  fault: unknown,
  c: Context<Env>,
  report: (line: string) => void,
): Response | Promise<Response> {
  if (fault instanceof StoreFault)
    return wantsPage(c) ? problemPage(c, 503, fault.message) : problem(c, 503, fault.message);
  // Whoever asked has gone away: nobody's fault, and nobody to tell.
  if ((fault as NodeJS.ErrnoException).code === 'ECONNRESET') return problem(c, 400, en.detail.form);
  report(en.fault(c.get('requestId'), describe(fault)));
  return wantsPage(c) ? problemPage(c, 500, en.detail[500]) : problem(c, 500, en.detail[500]);
}

function wantsPage(c: Context<Env>): boolean {
  return !c.req.path.startsWith('/api/') && (c.req.header('Accept') ?? '').includes('text/html');
}
