import { drawingFile } from '../../views/quiz/drawing.tsx';
import type { QuizSet } from '../build.ts';
import { drawingPath, qtiItem } from './qti-item.ts';
import { xml, xmlDocument } from './xml.ts';
import { type Entry, zipOf } from './zip.ts';

const itemNamespace = 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0';
const packageNamespace = 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1';
const itemType = 'imsqti_item_xmlv3p0';
const testType = 'imsqti_test_xmlv3p0';
const pathOf = (id: string): string => `items/${id}.xml`;

/** A set as a QTI 3.0 package: a zip of the manifest, the test, and a document for each item. */
export function qtiPackage(set: QuizSet): Uint8Array {
  return zipOf(qtiFiles(set));
}

/** The files of the package, the manifest first. */
export function qtiFiles(set: QuizSet): Entry[] {
  const files: readonly (readonly [path: string, text: string])[] = [
    ['imsmanifest.xml', manifest(set)],
    ['test.xml', test(set)],
    ...set.items.map((item) => [pathOf(item.id), qtiItem(item)] as const),
    ...drawingsIn(set).map((id) => [drawingPath(id), drawingFile(id)!] as const),
  ];
  return files.map(([path, text]) => ({ path, bytes: new TextEncoder().encode(text) }));
}

const drawingsIn = ({ items }: QuizSet): string[] => [...new Set(items.flatMap(({ drawing }) => drawing ?? []))];

function manifest({ items, title }: QuizSet): string {
  const metadata = xml('metadata', {}, xml('schema', {}, 'QTI Package'), xml('schemaversion', {}, '3.0.0'));
  const resources = items.map(({ id, drawing }) =>
    xml(
      'resource',
      { identifier: id, type: itemType, href: pathOf(id) },
      xml('file', { href: pathOf(id) }),
      drawing === undefined ? undefined : xml('file', { href: drawingPath(drawing) }),
    ),
  );
  const needs = items.map(({ id }) => xml('dependency', { identifierref: id }));
  const testFile = xml('file', { href: 'test.xml' });
  const whole = xml('resource', { identifier: 'test', type: testType, href: 'test.xml' }, testFile, needs);
  return xmlDocument(
    xml(
      'manifest',
      { xmlns: packageNamespace, identifier: identifierOf(title) },
      metadata,
      xml('organizations'),
      xml('resources', {}, whole, resources),
    ),
  );
}

function test({ items, title }: QuizSet): string {
  const refs = items.map(({ id }) => xml('qti-assessment-item-ref', { identifier: id, href: pathOf(id) }));
  const section = xml('qti-assessment-section', { identifier: 'all', title, visible: true }, refs);
  const part = xml(
    'qti-test-part',
    { identifier: 'part', 'navigation-mode': 'nonlinear', 'submission-mode': 'individual' },
    section,
  );
  return xmlDocument(xml('qti-assessment-test', { xmlns: itemNamespace, identifier: 'test', title }, part));
}

/** A text as an identifier: a letter first, then letters, digits and hyphens, 32 at most. */
const identifierOf = (text: string): string =>
  `quiz-${text.replace(/[^A-Za-z0-9]{1,200}/g, '-').slice(0, 27)}`.replace(/-$/, '');
