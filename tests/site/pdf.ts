import { inflateSync } from 'node:zlib';

/** Pages of a PDF. */
export const pagesIn = (pdf: Buffer): number => (pdf.toString('latin1').match(/\/Type \/Page\b/g) ?? []).length;

/**
 * The text of a PDF that the browser printed, without its spaces, which are not always written. Reads what that printer writes
 * and no more: flate streams, fonts by name with a table of their letters, text as hexadecimal glyphs.
 */
export function textIn(pdf: Buffer): string {
  const source = pdf.toString('latin1');
  const objects = new Map<string, string>();
  for (const [, id, body] of source.matchAll(/(?:^|\n)(\d+) 0 obj\b([\s\S]*?)endobj/g)) objects.set(id!, body!);
  const fonts = new Map<string, ReadonlyMap<string, string>>();
  for (const [, name, id] of source.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
    const table = /\/ToUnicode (\d+) 0 R/.exec(objects.get(id!) ?? '')?.[1];
    if (table) fonts.set(name!, lettersIn(streamIn(objects.get(table) ?? '')));
  }
  return [...objects.values()].map((body) => shownIn(streamIn(body), fonts)).join('');
}

function streamIn(body: string): string {
  const start = /stream\r?\n/.exec(body);
  const length = /\/Length (\d+)(?! \d+ R)/.exec(body)?.[1];
  if (!start || length === undefined) return '';
  // By its length: packed bytes may themselves end like a line.
  const from = start.index + start[0].length;
  const stream = body.slice(from, from + Number(length));
  if (!body.includes('/FlateDecode')) return stream;
  try {
    return inflateSync(Buffer.from(stream, 'latin1')).toString('latin1');
  } catch {
    return '';
  }
}

/** Letters by glyph, from the table of a font. */
function lettersIn(table: string): Map<string, string> {
  const letters = new Map<string, string>();
  const said = (hex: string): string => Buffer.from(hex, 'hex').swap16().toString('utf16le');
  for (const [, block] of table.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, glyph, letter] of block!.matchAll(/<([0-9A-F]{4})> <([0-9A-F]+)>/gi))
      letters.set(glyph!, said(letter!));
  for (const [, block] of table.matchAll(/beginbfrange([\s\S]*?)endbfrange/g))
    for (const [, from, to, letter] of block!.matchAll(/<([0-9A-F]{4})> <([0-9A-F]{4})> <([0-9A-F]{4})>/gi))
      for (let at = 0; at <= Number.parseInt(to!, 16) - Number.parseInt(from!, 16); at++) {
        const glyph = (Number.parseInt(from!, 16) + at).toString(16).toUpperCase().padStart(4, '0');
        letters.set(glyph, String.fromCharCode(Number.parseInt(letter!, 16) + at));
      }
  return letters;
}

/** What a content stream shows, letter by letter. */
function shownIn(stream: string, fonts: ReadonlyMap<string, ReadonlyMap<string, string>>): string {
  let font: ReadonlyMap<string, string> | undefined;
  let text = '';
  for (const [, name, hex] of stream.matchAll(/\/(F\d+) [\d.]+ Tf|<([0-9A-F]+)>/gi)) {
    if (name) font = fonts.get(name);
    else for (const [glyph] of hex!.matchAll(/.{4}/g)) text += font?.get(glyph.toUpperCase()) ?? '';
  }
  // Letters that the font ties together are one glyph: fi, ffi.
  return text.normalize('NFKC').replace(/\s/g, '');
}
