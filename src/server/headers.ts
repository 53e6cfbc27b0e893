import type { MiddlewareHandler } from 'hono';

/** For pages: our own styles, scripts and pictures, forms back to us, and nothing else at all. No script stands in a page. */
const pagePolicy = [
  "default-src 'none'",
  ...['script-src', 'style-src', 'img-src', 'connect-src', 'manifest-src', 'worker-src', 'form-action'].map(
    (what) => `${what} 'self'`,
  ),
  "base-uri 'none'",
  "frame-ancestors 'none'",
].join('; ');
/** For the worker that keeps the page: it fetches from us and nowhere else. */
const workerPolicy = "default-src 'none'; connect-src 'self'; base-uri 'none'; frame-ancestors 'none'";
/** For everything that is no page. */
const dataPolicy = "default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

const everywhere: Readonly<Record<string, string>> = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), geolocation=(), microphone=()',
  'Referrer-Policy': 'no-referrer',
  'Strict-Transport-Security': 'max-age=63072000; includeSubDomains',
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
};

/** Sets the security headers on every answer, and keeps answers out of shared caches unless a route says otherwise. */
export const strictHeaders: MiddlewareHandler = async (c, next) => {
  // Every answer may be packed. The one that packs would say so too, but by making a new answer.
  c.header('Vary', 'Accept-Encoding');
  await next();
  // Set on the answer itself: `c.header` would make a new answer of it for every one.
  const { headers } = c.res;
  for (const [name, value] of Object.entries(everywhere)) headers.set(name, value);
  const page = headers.get('Content-Type')?.startsWith('text/html');
  headers.set('Content-Security-Policy', page ? pagePolicy : c.req.path === '/worker.js' ? workerPolicy : dataPolicy);
  // A page may be kept by its own browser: the Back button must not ask to send a form again.
  if (!headers.has('Cache-Control')) headers.set('Cache-Control', page ? 'private, no-cache' : 'no-store');
};
