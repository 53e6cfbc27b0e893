import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { serve } from '@hono/node-server';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { openBrowser } from './browser.ts';

/** The server that is asked, and a browser to ask it with. */
export interface Site {
  readonly browser: Browser;
  readonly address: string;
}

/**
 * A server on this machine and a running browser, for the tests of one file. To be called once in it, after the hooks that
 * open what the server stands on: what is opened last is closed first.
 */
export function served(fetch: (request: Request) => Response | Promise<Response>): Site {
  const site: { browser?: Browser; server?: Server; address: string } = { address: '' };
  beforeAll(async () => {
    const server = serve({ fetch, port: 0, hostname: '127.0.0.1' }) as Server;
    site.server = server;
    if (!server.listening) await new Promise((resolve) => server.once('listening', resolve));
    site.address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
    site.browser = await openBrowser();
  });
  afterAll(async () => {
    await site.browser?.close();
    const { server } = site;
    server?.closeAllConnections();
    await new Promise((resolve) => (server ? server.close(resolve) : resolve(undefined)));
  });
  return site as Site;
}
