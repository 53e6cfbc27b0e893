import { expect, test } from 'vitest';
import { filesUnder } from './sources.ts';
import { importsOf, parse, walk } from './syntax.ts';

/** At run time nothing of the program calls out: the server listens and speaks to its own store, the page to its own server. */
const src = filesUnder('src', ['.ts', '.tsx']);
const callingOut = new Set([
  'fetch',
  'WebSocket',
  'EventSource',
  'XMLHttpRequest',
  'WebTransport',
  'RTCPeerConnection',
  'importScripts',
]);
const networkModules = new Set(
  ['http', 'https', 'http2', 'net', 'tls', 'dgram', 'dns', 'dns/promises'].map((name) => `node:${name}`),
);

test('the network is reached by the listener and the store alone', () => {
  const reaching = src.filter((file) =>
    importsOf(file).some((name) => networkModules.has(name) || name === 'pg' || name === 'undici'),
  );
  expect(reaching.map(({ path }) => path)).toEqual(['src/server/listen.ts', 'src/server/store/postgres.ts']);
});

test('nothing but the page on the phone fetches', () => {
  const fetching = new Set<string>();
  for (const file of src)
    walk(parse(file), (node) => {
      const { callee } = node as { callee?: { type: string; name?: string } };
      if (callee?.type === 'Identifier' && callingOut.has(callee.name ?? '')) fetching.add(file.path);
    });
  expect([...fetching].filter((path) => !path.startsWith('src/client/'))).toEqual([]);
});

test('no address of another machine stands in what the page fetches', () => {
  const addresses = src
    .filter(({ path }) => path.startsWith('src/client/'))
    .flatMap(({ path, text }) =>
      [...text.matchAll(/['"`](?:https?:)?\/\/[a-z0-9][^'"`]*/gi)].map(([address]) => `${path}: ${address}`),
    );
  expect(addresses).toEqual([]);
});
