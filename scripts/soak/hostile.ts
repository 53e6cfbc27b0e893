import { connect, type Socket } from 'node:net';

/** One request that no honest client sends, and what may come back: a status, or nothing where the line is cut. */
export interface Bad {
  readonly name: string;
  readonly bytes: string | Buffer;
  readonly statuses: readonly number[];
}

const head = (line: string, ...more: string[]): string => [line, 'Host: x', ...more, '', ''].join('\r\n');
const json = 'Content-Type: application/json';

/** Malformed, oversized and crafty requests. 0 stands for a connection that is closed without a word. */
export const bad: readonly Bad[] = [
  { name: 'no HTTP at all', bytes: '\x16\x03\x01\x00\xa5\x01\x00\x00', statuses: [0, 400] },
  { name: 'a method there is none of', bytes: head('BREW / HTTP/1.1'), statuses: [0, 400, 404, 405] },
  {
    name: 'a body that is no JSON',
    bytes: `${head('POST /api/ask HTTP/1.1', json, 'Content-Length: 9')}{"questio`,
    statuses: [400],
  },
  { name: 'no Content-Type', bytes: `${head('POST /api/ask HTTP/1.1', 'Content-Length: 2')}{}`, statuses: [415] },
  {
    name: 'a declared body of a gigabyte',
    bytes: head('POST /api/ask HTTP/1.1', json, 'Content-Length: 1000000000'),
    statuses: [413],
  },
  {
    name: 'a length that is no number',
    bytes: head('POST /api/ask HTTP/1.1', json, 'Content-Length: 1e3'),
    statuses: [400],
  },
  {
    name: 'two lengths',
    bytes: `${head('POST /api/ask HTTP/1.1', json, 'Content-Length: 2', 'Content-Length: 3')}{}`,
    statuses: [400],
  },
  {
    name: 'a length and chunks',
    bytes: `${head('POST /api/ask HTTP/1.1', json, 'Content-Length: 2', 'Transfer-Encoding: chunked')}2\r\n{}\r\n0\r\n\r\n`,
    statuses: [400],
  },
  {
    name: 'a chunk without end',
    bytes: `${head('POST /api/ask HTTP/1.1', json, 'Transfer-Encoding: chunked')}${'ffff\r\n'}${'x'.repeat(65535)}\r\nffff\r\n${'x'.repeat(65535)}\r\n`,
    statuses: [413],
  },
  {
    name: 'a chunk size that is none',
    bytes: `${head('POST /api/ask HTTP/1.1', json, 'Transfer-Encoding: chunked')}zz\r\n`,
    statuses: [0, 400],
  },
  { name: 'a header of 64 KiB', bytes: head('GET / HTTP/1.1', `X-Long: ${'x'.repeat(65536)}`), statuses: [0, 431] },
  {
    name: 'five thousand headers',
    bytes: head('GET / HTTP/1.1', ...Array.from({ length: 5000 }, (_, n) => `X-${n}: 1`)),
    statuses: [0, 200, 431],
  },
  { name: 'an address of 64 KiB', bytes: head(`GET /${'a'.repeat(65536)} HTTP/1.1`), statuses: [0, 414, 431] },
  {
    name: 'a line end in a header',
    bytes: head('GET /health HTTP/1.1', 'X-Request-Id: a\nSet-Cookie: b=c'),
    statuses: [0, 200, 400],
  },
  { name: 'two host names', bytes: `GET /health HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n`, statuses: [200, 400] },
  { name: 'no host name', bytes: 'GET /health HTTP/1.1\r\n\r\n', statuses: [200, 400] },
  {
    name: 'a host name that is none',
    bytes: 'GET /health HTTP/1.1\r\nHost: a b/?#@:99999\r\n\r\n',
    statuses: [200, 400],
  },
  ...[
    '/../../etc/passwd',
    '/assets/../../package.json',
    '/assets/%2e%2e/%2e%2e/package.json',
    '/assets/..%5c..%5cpackage.json',
    '/assets/%00',
    '//etc/passwd',
    '/%',
    '/%ff%fe',
    '/cards/%2e%2e%2f',
    '/assets/bladehand.css/../../x',
  ].map((path): Bad => ({ name: `the path ${path}`, bytes: head(`GET ${path} HTTP/1.1`), statuses: [400, 404] })),
  { name: 'a whole address for a path', bytes: head('GET http://evil.example/ HTTP/1.1'), statuses: [200, 400, 404] },
  { name: 'a tunnel', bytes: head('CONNECT evil.example:443 HTTP/1.1'), statuses: [0, 400, 404, 405] },
  {
    name: 'another protocol',
    bytes: head('GET / HTTP/1.1', 'Connection: Upgrade', 'Upgrade: websocket'),
    statuses: [0, 200, 400, 426],
  },
];

/** Sends it and gives the status of what comes back; 0 for a line that is cut, -1 when nothing comes in time. */
export function send(port: number, { bytes }: Bad, within = 5000): Promise<number> {
  return new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1');
    const late = setTimeout(() => done(-1), within);
    let got = '';
    const done = (status: number): void => {
      clearTimeout(late);
      socket.destroy();
      resolve(status);
    };
    socket.on('connect', () => socket.write(bytes));
    socket.on('data', (chunk) => {
      got += chunk.toString('latin1');
      const status = /^HTTP\/1\.1 (\d{3}) /.exec(got);
      if (status) done(Number(status[1]));
    });
    socket.on('error', () => done(0));
    socket.on('close', () => done(0));
  });
}

/** Clients that hold a connection and hardly use it: half a head, half a body, a body that trickles in, a reply left unread. */
export class Slow {
  readonly #sockets: Socket[] = [];
  readonly #timers: NodeJS.Timeout[] = [];

  constructor(port: number, each: number) {
    const body = JSON.stringify({ question: 'how many tons for 300 x 12 ft at 2 in' });
    const whole = `${head('POST /api/ask HTTP/1.1', json, `Content-Length: ${body.length}`)}${body}`;
    const starts = ['', 'POST /api/ask HTTP/1.1\r\nHost', whole.slice(0, -20), whole];
    for (const start of starts)
      for (let made = 0; made < each; made++) {
        const socket = connect(port, '127.0.0.1', () => socket.write(start));
        socket.on('error', () => {});
        if (start === whole) socket.pause();
        else socket.resume();
        this.#sockets.push(socket);
      }
    for (let made = 0; made < each; made++) {
      const socket = connect(port, '127.0.0.1').resume();
      socket.on('error', () => {});
      let at = 0;
      // So slow that it never ends while the soak lasts.
      this.#timers.push(
        setInterval(() => socket.writable && socket.write(whole[at++ % (whole.length - 1)] ?? ' '), 400),
      );
      this.#sockets.push(socket);
    }
  }

  /** How many connections the server has closed by now. */
  get closed(): number {
    return this.#sockets.filter((socket) => socket.closed || socket.destroyed || socket.readableEnded).length;
  }

  get all(): number {
    return this.#sockets.length;
  }

  end(): void {
    for (const timer of this.#timers) clearInterval(timer);
    for (const socket of this.#sockets) socket.destroy();
  }
}
