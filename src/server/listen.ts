import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { getRequestListener } from '@hono/node-server';
import type { App } from './env.ts';

/** How long requests that were accepted may take after a stop is asked for, in milliseconds. */
const grace = 10_000;
const signals = ['SIGTERM', 'SIGINT'] as const;

/**
 * Listens, tells its address, and resolves when a stop is asked for and every request accepted before has been answered.
 * A second signal ends it at once. Rejects with the system's error when the address cannot be had.
 */
export async function listenUntilStopped(
  app: App,
  host: string,
  port: number,
  tell: (address: string) => void,
): Promise<void> {
  // Looked after every five seconds; a head that does not come would otherwise hold its connection for a minute and a half.
  const server = createServer(
    { connectionsCheckingInterval: 5000, headersTimeout: 15_000 },
    getRequestListener(app.fetch),
  );
  // A body that trickles in would otherwise hold its connection for five minutes.
  server.requestTimeout = 30_000;
  await listening(server, host, port);
  tell(addressOf(server));
  await stopAsked();
  await closed(server);
}

function listening(server: Server, host: string, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.off('error', reject);
      resolve();
    });
  });
}

function addressOf(server: Server): string {
  const { address, family, port } = server.address() as AddressInfo;
  return `http://${family === 'IPv6' ? `[${address}]` : address}:${port}`;
}

function stopAsked(): Promise<void> {
  return new Promise((resolve) => {
    const stop = (): void => {
      for (const signal of signals) process.off(signal, stop);
      resolve();
    };
    for (const signal of signals) process.on(signal, stop);
  });
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const cutOff = setTimeout(() => server.closeAllConnections(), grace);
    server.close(() => {
      clearTimeout(cutOff);
      resolve();
    });
    server.closeIdleConnections();
  });
}
