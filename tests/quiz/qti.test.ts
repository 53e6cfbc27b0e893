import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { qtiItem } from '../../src/ask/quiz/export/qti-item.ts';
import { qtiFiles } from '../../src/ask/quiz/export/qti-package.ts';
import { kinds } from '../../src/ask/quiz/shapes.ts';
import type { QuizItem } from '../../src/ask/reply.ts';
import { setOf } from './sets.ts';

const { set } = setOf({ count: 60, seed: 'qti' });
const text = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

/** QTI_SCHEMAS is the folder of 1EdTech's schema files (`qtiv3p0` in it); XMLLINT the program, where it is not on the path. */
const schemas = process.env.QTI_SCHEMAS;
const xmllint = process.env.XMLLINT ?? 'xmllint';
const canValidate = schemas !== undefined && spawnSync(xmllint, ['--version']).status === 0;

/** Elements of QTI 3.0 as 1EdTech's schema names them, with the cardinality and interaction of each kind of item. */
const interactions: Readonly<Record<QuizItem['kind'], readonly [cardinality: string, type: string, element: string]>> =
  {
    'true-false': ['single', 'identifier', 'qti-choice-interaction'],
    one: ['single', 'identifier', 'qti-choice-interaction'],
    many: ['multiple', 'identifier', 'qti-choice-interaction'],
    order: ['ordered', 'identifier', 'qti-order-interaction'],
    number: ['single', 'float', 'qti-text-entry-interaction'],
  };

/** Elements opened and closed, and how deep it goes: a document is well formed when every one closes in turn. */
function isWellFormed(document: string): boolean {
  const open: string[] = [];
  for (const [, close, name, empty] of document
    .replace(/^<\?[^>]*\?>/, '')
    .matchAll(/<(\/?)([a-zA-Z-]+)[^<>]*?(\/?)>/g)) {
    if (close) {
      if (open.pop() !== name) return false;
    } else if (!empty) open.push(name!);
  }
  return open.length === 0 && !/&(?!amp;|lt;|gt;|quot;)/.test(document);
}

describe('the structure of a package', () => {
  test('every kind of item is in the set', () => {
    expect(new Set(set.items.map(({ kind }) => kind))).toEqual(new Set(kinds));
  });

  test.each(qtiFiles(set).map(({ path, bytes }) => [path, text(bytes)] as const))(
    '%s is well formed',
    (_, document) => {
      expect(isWellFormed(document)).toBe(true);
    },
  );

  test.each(set.items.map((item) => [item.id, item] as const))(
    '%s declares its answer, asks, scores and says why',
    (_, item) => {
      const document = qtiItem(item);
      const [cardinality, type, element] = interactions[item.kind];
      expect(document).toContain('xmlns="http://www.imsglobal.org/xsd/imsqtiasi_v3p0"');
      expect(document).toMatch(
        new RegExp(`<qti-response-declaration identifier="RESPONSE" cardinality="${cardinality}" base-type="${type}">`),
      );
      expect(document.match(new RegExp(`<${element} `, 'g'))).toHaveLength(1);
      expect(document.match(/<qti-simple-choice /g) ?? []).toHaveLength(item.options.length);
      const values = [...document.matchAll(/<qti-value>([^<]*)<\/qti-value>/g)].map(([, value]) => value!);
      if (item.kind === 'number') {
        expect(values).toEqual([String(item.key)]);
        expect(document).toContain(
          item.tolerance
            ? `tolerance-mode="absolute" tolerance="${item.tolerance} ${item.tolerance}"`
            : 'tolerance-mode="exact"',
        );
      } else {
        const keys = typeof item.key === 'object' ? item.key : [String(item.key)];
        const told = values.map((letter) => item.options[letter.charCodeAt(0) - 65]!.text);
        expect(item.kind === 'order' ? told : told.sort()).toEqual(item.kind === 'order' ? keys : [...keys].sort());
      }
      expect(document.indexOf('<qti-is-null>')).toBeLessThan(document.indexOf('<qti-response-else-if>'));
      expect(document).toMatch(/<qti-modal-feedback outcome-identifier="WHY"/);
    },
  );

  test('identifiers are ones that every importer takes', () => {
    for (const { id } of set.items) expect(id).toMatch(/^[a-z][a-z0-9-]{1,30}$/);
  });

  test('the manifest and the test name every item, once as a resource', () => {
    const [manifest, testFile] = qtiFiles(set).map(({ bytes }) => text(bytes)) as [string, string];
    for (const { id } of set.items) {
      expect(
        manifest.match(
          new RegExp(`<resource identifier="${id}" type="imsqti_item_xmlv3p0" href="items/${id}.xml">`, 'g'),
        ),
      ).toHaveLength(1);
      expect(
        testFile.match(new RegExp(`<qti-assessment-item-ref identifier="${id}" href="items/${id}.xml"/>`, 'g')),
      ).toHaveLength(1);
    }
    expect(manifest).toContain('type="imsqti_test_xmlv3p0" href="test.xml"');
  });

  test('what XML would read as markup comes out as text', () => {
    const item: QuizItem = {
      ...set.items.find(({ kind }) => kind === 'one')!,
      stem: `a < b & "c" > ]]> \u0000\u000b\ud800?`,
    };
    expect(qtiItem(item)).toContain('<qti-prompt>a &lt; b &amp; &quot;c&quot; &gt; ]]&gt; ?</qti-prompt>');
  });
});

const schemaOf = (path: string): string =>
  path === 'imsmanifest.xml' ? 'qtiv3p0/imsqtiv3p0_imscpv1p2_v1p0.xsd' : 'qtiv3p0/imsqti_asiv3p0_sbacv1p0_v1p0.xsd';

test('a package is valid by the schemas of 1EdTech, where they are at hand', { timeout: 60_000 }, () => {
  if (!canValidate) {
    console.warn(
      'NOT VALIDATED: set QTI_SCHEMAS to the folder of 1EdTech’s schema files and have xmllint on the path (libxml2-utils). Only the structure of the QTI package was looked at.',
    );
  }
  const folder = mkdtempSync(join(tmpdir(), 'qti-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const files = qtiFiles(set);
  for (const { path, bytes } of files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), bytes);
  }
  const told = files.filter(({ path }) => path.endsWith('.xml'));
  for (const schema of new Set(canValidate ? told.map(({ path }) => schemaOf(path)) : [])) {
    const documents = told.filter(({ path }) => schemaOf(path) === schema).map(({ path }) => join(folder, path));
    const { status, stderr } = spawnSync(
      xmllint,
      ['--nonet', '--noout', '--schema', join(schemas!, schema), ...documents],
      { encoding: 'utf8' },
    );
    expect(status, stderr).toBe(0);
  }
  const drawings = new Set(set.items.flatMap(({ drawing }) => drawing ?? []));
  expect(drawings.size).toBeGreaterThan(0);
  expect(files.length).toBe(set.items.length + 2 + drawings.size);
});
