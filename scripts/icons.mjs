import { crc32, deflateSync } from 'node:zlib';

/** The mark: a blade over a windrow. Corners in a square of 32. */
const shapes = [
  { colour: [0xff, 0xff, 0xff], corners: [5, 18, 25, 6, 28, 10, 8, 22] },
  { colour: [0xff, 0xd4, 0x00], corners: [4, 28, 12, 24, 20, 28] },
];
const ground = [0x11, 0x11, 0x11];
/** Samples a pixel, each way: edges come out smooth. */
const fine = 3;

/** The icons of the installed page; the one to be cut to any shape keeps to the middle. */
export function drawIcons() {
  return [
    { name: 'icon-192.png', size: 192, room: 0 },
    { name: 'icon-512.png', size: 512, room: 0 },
    { name: 'icon-cut-512.png', size: 512, room: 0.14 },
    { name: 'icon-180.png', size: 180, room: 0.06 },
  ].map(({ name, size, room }) => ({ file: name, type: 'image/png', contents: png(size, draw(size, room)) }));
}

/** Pixels of the mark, three bytes each, with `room` of the width left free at every side. */
function draw(size, room) {
  const pixels = Buffer.alloc(size * size * 3);
  const place = (at) => ((at / size - room) / (1 - 2 * room)) * 32;
  for (let y = 0; y < size; y++)
    for (let x = 0; x < size; x++) {
      const sum = [0, 0, 0];
      for (let i = 0; i < fine * fine; i++) {
        const colour = colourAt(place(x + ((i % fine) + 0.5) / fine), place(y + (Math.floor(i / fine) + 0.5) / fine));
        for (const part of [0, 1, 2]) sum[part] += colour[part];
      }
      for (const part of [0, 1, 2]) pixels[(y * size + x) * 3 + part] = Math.round(sum[part] / fine ** 2);
    }
  return pixels;
}

function colourAt(x, y) {
  for (const { colour, corners } of shapes) if (isInside(corners, x, y)) return colour;
  return ground;
}

/** By the number of edges to the right of the point. */
function isInside(corners, x, y) {
  let inside = false;
  for (let i = 0; i < corners.length; i += 2) {
    const [ax, ay] = [corners[i], corners[i + 1]];
    const [bx, by] = [corners[(i + 2) % corners.length], corners[(i + 3) % corners.length]];
    if (ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay)) inside = !inside;
  }
  return inside;
}

/** A PNG file (W3C Portable Network Graphics, third edition) of 8-bit RGB pixels. */
function png(size, pixels) {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const rows = Buffer.alloc(size * (size * 3 + 1));
  for (let y = 0; y < size; y++) pixels.copy(rows, y * (size * 3 + 1) + 1, y * size * 3, (y + 1) * size * 3);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([signature, chunk('IHDR', header), chunk('IDAT', deflateSync(rows)), chunk('IEND', '')]);
}

function chunk(type, data) {
  const body = Buffer.concat([Buffer.from(type), Buffer.from(data)]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(body.length - 4);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(checksum(body));
  return Buffer.concat([length, body, sum]);
}

/** Node 20.15 and newer have it; the typed list of the oldest Node allowed does too. */
const checksum = (bytes) => crc32(bytes) >>> 0;
