/** Stands for a line that was too long to keep. */
export const tooLong = Symbol('too long');

const lineFeed = 10;

/**
 * The lines of a stream as they come in, without their line breaks (LF or CRLF) and without a byte order mark at the
 * start. A line of more than `most` bytes is not kept: `tooLong` stands in its place.
 */
export async function* splitLines(
  stream: NodeJS.ReadableStream,
  most: number,
): AsyncGenerator<string | typeof tooLong> {
  let parts: Buffer[] = [];
  let size = 0;
  const add = (part: Buffer): void => {
    size += part.length;
    if (size <= most) parts.push(part);
    else parts = [];
  };
  const take = (): string | typeof tooLong => {
    const line =
      size <= most
        ? Buffer.concat(parts)
            .toString('utf8')
            .replace(/^\ufeff/, '')
            .replace(/\r$/, '')
        : tooLong;
    parts = [];
    size = 0;
    return line;
  };
  for await (const chunk of stream) {
    const bytes = typeof chunk === 'string' ? Buffer.from(chunk) : (chunk as Buffer);
    let from = 0;
    for (let end = bytes.indexOf(lineFeed); end >= 0; end = bytes.indexOf(lineFeed, from)) {
      add(bytes.subarray(from, end));
      yield take();
      from = end + 1;
    }
    add(bytes.subarray(from));
  }
  if (size > 0) yield take();
}
