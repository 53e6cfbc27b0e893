/** A file of a package. */
export interface Entry {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** Midnight of 1 January 1980, the first date a zip can hold: the same files make the same bytes whenever they are packed. */
const date = 0x21;
const utf8Names = 0x0800;
const version = 20;

/** A zip of the files as they are, nothing pressed together (PKWARE's APPNOTE, method 0). */
export function zipOf(entries: readonly Entry[]): Uint8Array {
  const parts: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let offset = 0;
  for (const { path, bytes } of entries) {
    const name = new TextEncoder().encode(path);
    const about = fields(
      [2, utf8Names],
      [2, 0],
      [2, 0],
      [2, date],
      [4, crc32(bytes)],
      [4, bytes.length],
      [4, bytes.length],
      [2, name.length],
      [2, 0],
    );
    const local = joined([fields([4, 0x04034b50], [2, version]), about, name, bytes]);
    directory.push(
      joined([
        fields([4, 0x02014b50], [2, version], [2, version]),
        about,
        fields([2, 0], [2, 0], [2, 0], [4, 0], [4, offset]),
        name,
      ]),
    );
    parts.push(local);
    offset += local.length;
  }
  const index = joined(directory);
  const count = entries.length;
  const end = fields([4, 0x06054b50], [2, 0], [2, 0], [2, count], [2, count], [4, index.length], [4, offset], [2, 0]);
  return joined([...parts, index, end]);
}

/** Numbers of so many bytes each, the low byte first. */
function fields(...list: readonly (readonly [bytes: 2 | 4, value: number])[]): Uint8Array {
  const bytes = list.flatMap(([size, value]) => Array.from({ length: size }, (_, at) => (value >>> (8 * at)) & 0xff));
  return Uint8Array.from(bytes);
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Checksum of a zip's entry: CRC-32 of ISO 3309, turned round. */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}
