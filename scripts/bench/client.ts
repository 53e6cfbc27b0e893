import { createConnection, type Socket } from 'node:net';

/**
 * One keep-alive connection that sends the same request again and again. Bare, since a client that costs as much as the
 * server would hide what is measured: the two share the machine.
 */
export class Client {
  readonly #socket: Socket;
  readonly #request: Buffer;
  #received: Buffer = Buffer.alloc(0);
  #settle: ((body: Buffer) => void) | undefined;
  #fail: ((fault: Error) => void) | undefined;

  private constructor(socket: Socket, request: Buffer) {
    this.#socket = socket;
    this.#request = request;
    socket.setNoDelay(true);
    socket.on('data', (chunk) => this.#take(chunk));
    socket.on('error', (fault) => this.#fail?.(fault));
    socket.on('close', () => this.#fail?.(new Error('the server closed the connection')));
  }

  /** Connects to a port of this machine. */
  static async connect(port: number, body: string): Promise<Client> {
    const head = [
      'POST /api/ask HTTP/1.1',
      `Host: 127.0.0.1:${port}`,
      'Content-Type: application/json',
      'Accept-Encoding: identity',
      `Content-Length: ${Buffer.byteLength(body)}`,
    ];
    const socket = createConnection({ port, host: '127.0.0.1' });
    await new Promise((settle, fail) => socket.once('connect', settle).once('error', fail));
    return new Client(socket, Buffer.from(`${head.join('\r\n')}\r\n\r\n${body}`));
  }

  /** Sends the request and gives the body of the reply. Throws an Error for any status but 200. */
  send(): Promise<Buffer> {
    return new Promise((settle, fail) => {
      this.#settle = settle;
      this.#fail = fail;
      this.#socket.write(this.#request);
    });
  }

  close(): void {
    this.#fail = undefined;
    this.#socket.destroy();
  }

  #take(chunk: Buffer): void {
    this.#received = this.#received.length > 0 ? Buffer.concat([this.#received, chunk]) : chunk;
    const body = bodyOf(this.#received);
    if (!body) return;
    const ok = this.#received.subarray(9, 12).toString() === '200';
    this.#received = Buffer.alloc(0);
    if (ok) this.#settle?.(body);
    else this.#fail?.(new Error(`not answered: ${body.toString().slice(0, 200)}`));
  }
}

/** The body of a reply that has come in whole, or nothing yet. */
function bodyOf(received: Buffer): Buffer | undefined {
  const end = received.indexOf('\r\n\r\n');
  if (end < 0) return undefined;
  const head = received.subarray(0, end).toString('latin1');
  const length = /\r\ncontent-length: (\d{1,9})/i.exec(head);
  if (length) {
    const body = received.subarray(end + 4);
    return body.length >= Number(length[1]) ? body : undefined;
  }
  return received.subarray(-5).equals(lastChunk) ? unchunked(received.subarray(end + 4)) : undefined;
}

const lastChunk = Buffer.from('0\r\n\r\n');

function unchunked(body: Buffer): Buffer {
  const parts: Buffer[] = [];
  for (let at = 0; ; ) {
    const lineEnd = body.indexOf('\r\n', at);
    const size = Number.parseInt(body.subarray(at, lineEnd).toString('latin1'), 16);
    if (!size) return Buffer.concat(parts);
    parts.push(body.subarray(lineEnd + 2, lineEnd + 2 + size));
    at = lineEnd + 2 + size + 2;
  }
}
