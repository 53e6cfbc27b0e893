import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { bytesOf, type ClientFile, clientBuild, clientFile } from '../../src/server/client-files.ts';
import { app } from './fixtures.ts';

const KiB = 1024;
const packed = (files: readonly ClientFile[]): number => files.reduce((sum, { br = 0 }) => sum + br, 0);

/** A file and all that it loads at once. */
function whole(name: string): ClientFile[] {
  const first = clientFile(name)!;
  const needs = first.needs.map((file) => clientBuild.files.find((each) => each.file === file)!);
  return [first, ...needs];
}

describe('what the phone has to fetch, packed', () => {
  test('the page as it first comes, with its style: at most 14 KiB', async () => {
    const html = await (await app.request('/')).text();
    const addresses = [...html.matchAll(/<link rel="stylesheet" href="([^"]+)"/g)].map(([, href]) => href!);
    expect(addresses.length).toBeGreaterThan(0);
    const styles = await Promise.all(addresses.map(async (href) => (await app.request(href)).text()));
    expect([html, ...styles].reduce((sum, text) => sum + gzipSync(text).length, 0)).toBeLessThanOrEqual(14 * KiB);
  });

  test('the script of the page, with which a question can be sent: at most 10 KiB', () => {
    expect(packed(whole('page.js'))).toBeLessThanOrEqual(10 * KiB);
  });

  test('the records: at most 120 KiB; with what an emergency is known by 126', () => {
    const files = whole('records.js');
    expect(Math.max(...files.map(({ br = 0 }) => br))).toBeLessThanOrEqual(120 * KiB);
    expect(packed(files)).toBeLessThanOrEqual(126 * KiB);
  });

  test('what answers a figure by them: at most 90 KiB of script', () => {
    const records = new Set(whole('records.js'));
    expect(packed(whole('answers.js').filter((file) => !records.has(file)))).toBeLessThanOrEqual(90 * KiB);
  });

  test('no example of a relation is sent to the phone', () => {
    const script = whole('records.js').map((file) => new TextDecoder().decode(bytesOf(file)));
    // The title of a relation is there, the source of its example is not.
    expect(script.join('')).toContain('road taken as warm as the air');
    expect(script.join('')).not.toMatch(/examples:\[\{given:/);
  });

  test('files are sent packed as the browser can read them, and unpacked to one that cannot', async () => {
    const file = clientFile('page.js')!;
    for (const [asked, coding, bytes] of [
      ['br, gzip', 'br', file.br],
      ['gzip', 'gzip', file.gz],
      ['', null, file.bytes],
    ] as const) {
      const response = await app.request(`/assets/${file.file}`, { headers: { 'Accept-Encoding': asked } });
      expect(response.headers.get('Content-Encoding')).toBe(coding);
      expect((await response.arrayBuffer()).byteLength).toBe(bytes);
    }
    expect(bytesOf(file).length).toBe(file.bytes);
  });
});
