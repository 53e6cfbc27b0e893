/** Writes, and waits until the stream has taken it. Rejects when its reader is gone. */
export function write(stream: NodeJS.WritableStream, text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    stream.write(text, (fault) => (fault ? reject(fault) : resolve()));
  });
}

/** True for the error of a stream whose reader has gone. */
export function isClosed(fault: unknown): boolean {
  const { code } = (fault ?? {}) as { code?: unknown };
  return code === 'EPIPE' || code === 'ERR_STREAM_DESTROYED';
}
