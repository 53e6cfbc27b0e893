import { describe, expect, test } from 'vitest';
import { app, post } from './fixtures.ts';

const request = (path: string, headers: Record<string, string> = {}) =>
  app.request(path, { headers: { 'X-Request-Id': 'crew-12', ...headers } });

describe('headers', () => {
  test('of a page', async () => {
    expect(Object.fromEntries((await request('/')).headers)).toMatchInlineSnapshot(`
      {
        "cache-control": "private, no-cache",
        "content-language": "en",
        "content-security-policy": "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
        "content-type": "text/html; charset=UTF-8",
        "cross-origin-opener-policy": "same-origin",
        "cross-origin-resource-policy": "same-origin",
        "permissions-policy": "camera=(), geolocation=(), microphone=()",
        "referrer-policy": "no-referrer",
        "strict-transport-security": "max-age=63072000; includeSubDomains",
        "vary": "Accept-Encoding",
        "x-content-type-options": "nosniff",
        "x-frame-options": "DENY",
        "x-request-id": "crew-12",
      }
    `);
  });

  test('of an answer', async () => {
    const response = await post(
      { question: 'tons' },
      { 'Content-Type': 'application/json', 'X-Request-Id': 'crew-12' },
    );
    expect(Object.fromEntries(response.headers)).toMatchInlineSnapshot(`
      {
        "cache-control": "no-store",
        "content-security-policy": "default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
        "content-type": "application/json",
        "cross-origin-opener-policy": "same-origin",
        "cross-origin-resource-policy": "same-origin",
        "permissions-policy": "camera=(), geolocation=(), microphone=()",
        "referrer-policy": "no-referrer",
        "strict-transport-security": "max-age=63072000; includeSubDomains",
        "vary": "Accept-Encoding",
        "x-content-type-options": "nosniff",
        "x-frame-options": "DENY",
        "x-request-id": "crew-12",
      }
    `);
  });

  test('of a problem', async () => {
    expect(Object.fromEntries((await request('/nowhere')).headers)).toMatchInlineSnapshot(`
      {
        "cache-control": "no-store",
        "content-language": "en",
        "content-security-policy": "default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
        "content-type": "application/problem+json",
        "cross-origin-opener-policy": "same-origin",
        "cross-origin-resource-policy": "same-origin",
        "permissions-policy": "camera=(), geolocation=(), microphone=()",
        "referrer-policy": "no-referrer",
        "strict-transport-security": "max-age=63072000; includeSubDomains",
        "vary": "Accept-Encoding",
        "x-content-type-options": "nosniff",
        "x-frame-options": "DENY",
        "x-request-id": "crew-12",
      }
    `);
  });

  test('a request id is echoed; one that is none gets another', async () => {
    expect((await request('/health')).headers.get('X-Request-Id')).toBe('crew-12');
    for (const id of ['a b', 'x'.repeat(101), '<script>']) {
      expect((await request('/health', { 'X-Request-Id': id })).headers.get('X-Request-Id')).toMatch(/^[0-9a-f-]{36}$/);
    }
  });
});

describe('the stylesheet', () => {
  test('is kept for good under the address the page names, and briefly under the bare one', async () => {
    const html = await (await app.request('/')).text();
    const address = /<link rel="stylesheet" href="([^"]+)"/.exec(html)?.[1] ?? '';
    expect(address).toMatch(/^\/assets\/bladehand\.css\?v=[0-9a-f]{12}$/);
    const named = await app.request(address);
    expect(named.headers.get('Content-Type')).toBe('text/css; charset=utf-8');
    expect(named.headers.get('Cache-Control')).toBe('public, max-age=31536000, immutable');
    for (const other of ['/assets/bladehand.css', '/assets/bladehand.css?v=000000000000']) {
      expect((await app.request(other)).headers.get('Cache-Control')).toBe('public, max-age=300');
    }
  });

  test('and the first page take at most 14 KiB on the wire together', async () => {
    const sizes = await Promise.all(
      ['/', '/assets/bladehand.css'].map(async (path) => {
        const response = await app.request(path, { headers: { 'Accept-Encoding': 'gzip' } });
        expect(response.headers.get('Content-Encoding')).toBe('gzip');
        return (await response.arrayBuffer()).byteLength;
      }),
    );
    expect(sizes[0]! + sizes[1]!).toBeLessThanOrEqual(14 * 1024);
  });
});
