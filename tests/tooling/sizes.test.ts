import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import { type ClientFile, clientBuild, clientFile } from '../../src/server/client-files.ts';

/**
 * What goes over a poor line, packed as it is sent. At 400 kilobits a second 50 KiB take a second. The bounds are the budgets
 * where they hold; the code that answers is over its budget of 60 KiB, and held to what it is.
 */
const kib = 1024;
const app = createApp({ ask });

const byFile = new Map(clientBuild.files.map((file) => [file.file, file]));
const withNeeds = (file: ClientFile): ClientFile[] => [file, ...file.needs.map((name) => byFile.get(name)!)];
const packed = (files: readonly ClientFile[]): number =>
  [...new Set(files)].reduce((sum, { br, bytes }) => sum + (br ?? bytes), 0) / kib;

const page = withNeeds(clientFile('page.js')!);
const answers = withNeeds(clientFile('answers.js')!).filter((file) => !page.includes(file));
/** The largest part is the records. */
const [rules, ...code] = [...answers].sort((a, b) => b.bytes - a.bytes) as [ClientFile, ...ClientFile[]];

describe('sizes, packed', () => {
  test('the first page and its style', async () => {
    const html = await (await app.request('/')).text();
    const addresses = [...html.matchAll(/<link rel="stylesheet" href="([^"]+)"/g)].map(([, href]) => href!);
    expect(addresses.length).toBeGreaterThan(0);
    const styles = await Promise.all(addresses.map(async (href) => (await app.request(href)).text()));
    const size = [html, ...styles].reduce((sum, text) => sum + gzipSync(text).length, 0) / kib;
    expect(size).toBeLessThanOrEqual(14);
  });

  test('the script that the page starts with', () => {
    expect(packed(page)).toBeLessThanOrEqual(10);
  });

  test('the records', () => {
    expect(packed([rules])).toBeLessThanOrEqual(120);
  });

  test('the code that answers, the records left out', () => {
    expect(packed(code)).toBeLessThanOrEqual(96);
  });
});
