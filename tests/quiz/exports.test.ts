import { crc32 } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import type { QuizSet } from '../../src/ask/quiz/build.ts';
import { asCsv, columns } from '../../src/ask/quiz/export/csv.ts';
import { asJson } from '../../src/ask/quiz/export/json.ts';
import { keyLetters } from '../../src/ask/quiz/export/letters.ts';
import { qtiFiles, qtiPackage } from '../../src/ask/quiz/export/qti-package.ts';
import { asText } from '../../src/ask/quiz/export/text.ts';
import { setOf } from './sets.ts';

const { set } = setOf({ count: 40, seed: 'exports' });
const odd: QuizSet = {
  ...set,
  items: [
    {
      ...set.items[0]!,
      id: 'q01',
      kind: 'number',
      options: [],
      key: -3.5,
      tolerance: 0.1,
      unit: 'degC',
      stem: '=2+3, "said" he,\r\nor not?',
      why: '@x',
      source: '+1',
      rule: '-a',
    },
    {
      ...set.items[0]!,
      id: 'q02',
      kind: 'one',
      options: [{ text: '-1 in' }, { text: '\tb', mistake: 'tenfold' }],
      key: '-1 in',
    },
  ],
};

/** Reads CSV as RFC 4180 has it, by a hand of its own. */
function parse(text: string): string[][] {
  const rows: string[][] = [[]];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < text.length; at++) {
    const sign = text[at]!;
    if (quoted && sign === '"' && text[at + 1] === '"') {
      cell += '"';
      at++;
    } else if (sign === '"') quoted = !quoted;
    else if (!quoted && (sign === ',' || text.startsWith('\r\n', at))) {
      rows.at(-1)!.push(cell);
      cell = '';
      if (sign === '\r') {
        rows.push([]);
        at++;
      }
    } else cell += sign;
  }
  rows.pop();
  return rows;
}

const table = (of: QuizSet) => {
  const [head, ...rows] = parse(asCsv(of));
  return rows.map((row) => new Map(head!.map((name, at) => [name, row[at]!])));
};

test('JSON is read again as the set it was', () => {
  expect(JSON.parse(asJson(set))).toEqual(set);
  expect(JSON.parse(asJson(set)).items).toHaveLength(40);
});

describe('CSV', () => {
  test('is read again: every stem, option, key and reason', () => {
    const rows = table(set);
    expect(rows).toHaveLength(set.items.length);
    set.items.forEach((item, at) => {
      const row = rows[at]!;
      expect(row.size).toBe(columns.length);
      expect([row.get('id'), row.get('type'), row.get('stem'), row.get('explanation'), row.get('source')]).toEqual([
        item.id,
        item.kind,
        item.stem,
        item.why,
        item.source,
      ]);
      expect('abcdefgh'.split('').flatMap((place) => row.get(`option_${place}`) || [])).toEqual(
        item.options.map(({ text }) => text),
      );
      const key = item.kind === 'number' ? String(item.key) : keyLetters(item).join(item.kind === 'order' ? '>' : ' ');
      expect(row.get('key')).toBe(key);
    });
  });

  test('quotes what has to be, and ends every line with CRLF', () => {
    const text = asCsv(odd);
    expect(text.endsWith('\r\n')).toBe(true);
    expect(text).toContain(`"'=2+3, ""said"" he,\r\nor not?"`);
    expect(asCsv(odd, { spreadsheet: true }).charCodeAt(0)).toBe(0xfeff);
  });

  test('no cell is a formula to a spreadsheet, but a number stays one', () => {
    const [first, second] = table(odd);
    expect([first!.get('stem'), first!.get('explanation'), first!.get('source'), first!.get('rule')]).toEqual([
      `'=2+3, "said" he,\r\nor not?`,
      `'@x`,
      `'+1`,
      `'-a`,
    ]);
    expect(first!.get('key')).toBe('-3.5');
    expect([second!.get('option_a'), second!.get('option_b'), second!.get('key')]).toEqual([`'-1 in`, `'\tb`, 'A']);
    for (const row of [...table(set), ...table(odd)])
      for (const [name, cell] of row) if (name !== 'key') expect(cell).not.toMatch(/^[=+\-@\t\r]/);
  });
});

describe('text', () => {
  test('the sheet alone gives nothing away', () => {
    const sheet = asText(set, { key: false });
    expect(sheet).not.toMatch(/Answer key|Why:|Source:/);
    for (const { source } of set.items) expect(sheet).not.toContain(source);
    expect(sheet).toContain('This is practice. It certifies nobody');
    expect(sheet).toContain(`Seed exports, rules ${set.rules.version}`);
  });

  test('the key has every answer, the why, the source and what was wrong', () => {
    const text = asText(set, { key: true });
    const key = text.slice(text.indexOf('Answer key'));
    set.items.forEach((item, at) => {
      expect(key).toContain(`\n${at + 1}. `);
      expect(key).toContain(item.why);
      expect(key).toContain(item.source);
    });
    expect(key).not.toContain('undefined');
  });

  test('a key made by other rules says so', () => {
    expect(asText(set, { key: true, rules: 'deadbeef' })).toContain(
      `This key was made by rules ${set.rules.version}; the rules are now deadbeef.`,
    );
    expect(asText(set, { key: true, rules: set.rules.version })).not.toContain('This key was made by');
  });
});

/** Entries of a zip as its directory lists them, read by a hand of its own. */
function unzip(bytes: Uint8Array) {
  const view = new DataView(bytes.buffer);
  const end = bytes.length - 22;
  expect(view.getUint32(end, true)).toBe(0x06054b50);
  let at = view.getUint32(end + 16, true);
  return Array.from({ length: view.getUint16(end + 10, true) }, () => {
    expect(view.getUint32(at, true)).toBe(0x02014b50);
    const [crc, packed, size, nameLength] = [
      view.getUint32(at + 16, true),
      view.getUint32(at + 20, true),
      view.getUint32(at + 24, true),
      view.getUint16(at + 28, true),
    ];
    const path = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength));
    const local = view.getUint32(at + 42, true);
    expect(view.getUint32(local, true)).toBe(0x04034b50);
    const start = local + 30 + view.getUint16(local + 26, true);
    at += 46 + nameLength;
    return { path, crc, packed, bytes: bytes.subarray(start, start + size) };
  });
}

test('the package is a zip of its files, the manifest first, the same bytes every time', () => {
  const zip = qtiPackage(set);
  const entries = unzip(zip);
  expect(entries.map(({ path }) => path)).toEqual(qtiFiles(set).map(({ path }) => path));
  expect(entries[0]!.path).toBe('imsmanifest.xml');
  entries.forEach((entry, at) => {
    expect(Buffer.compare(entry.bytes, qtiFiles(set)[at]!.bytes)).toBe(0);
    expect(entry.crc).toBe(crc32(entry.bytes));
    expect(entry.packed).toBe(entry.bytes.length);
  });
  expect(Buffer.compare(qtiPackage(set), zip)).toBe(0);
});
