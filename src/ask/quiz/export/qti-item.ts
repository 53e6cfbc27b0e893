import type { QuizItem } from '../../reply.ts';
import { drawingInWords } from '../drawing-words.ts';
import { unitInWords } from '../figures.ts';
import { keyLetters, letterAt } from './letters.ts';
import { type Xml, xml, xmlDocument } from './xml.ts';

const namespace = 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0';

/** One item as a QTI 3.0 document: the question, its key, how it is scored, and the why as feedback. */
export function qtiItem(item: QuizItem): string {
  const attributes = {
    xmlns: namespace,
    identifier: item.id,
    title: titleOf(item),
    adaptive: false,
    'time-dependent': false,
    'xml:lang': 'en',
  };
  return xmlDocument(
    xml(
      'qti-assessment-item',
      attributes,
      declaration(item),
      outcomes,
      xml('qti-item-body', {}, interaction(item)),
      scoring(item),
      feedback(item),
    ),
  );
}

/** Where the drawing of an item is in the package. */
export const drawingPath = (id: string): string => `drawings/${id}.svg`;

/** A short name of an item for lists. */
const titleOf = ({ topic, level, kind }: QuizItem): string => `${topic}, ${level}, ${kind}`;

const cardinality: Readonly<Record<QuizItem['kind'], string>> = {
  'true-false': 'single',
  one: 'single',
  many: 'multiple',
  order: 'ordered',
  number: 'single',
};

function declaration(item: QuizItem): Xml {
  const keys = item.kind === 'number' ? [String(item.key)] : keyLetters(item);
  const values = keys.map((key) => xml('qti-value', {}, key));
  const type = item.kind === 'number' ? 'float' : 'identifier';
  const attributes = { identifier: 'RESPONSE', cardinality: cardinality[item.kind], 'base-type': type };
  return xml('qti-response-declaration', attributes, xml('qti-correct-response', {}, values));
}

const outcomes: readonly Xml[] = [
  xml('qti-outcome-declaration', {
    identifier: 'SCORE',
    cardinality: 'single',
    'base-type': 'float',
    'normal-maximum': 1,
  }),
  xml('qti-outcome-declaration', { identifier: 'WHY', cardinality: 'single', 'base-type': 'identifier' }),
];

function interaction(item: QuizItem): readonly Xml[] {
  const { stem, options, kind, unit } = item;
  const choices = options.map(({ text }, at) => xml('qti-simple-choice', { identifier: letterAt(at) }, text));
  const prompt = xml('qti-prompt', {}, stem);
  const words = drawingInWords(item.drawing);
  const shown =
    words === undefined ? [] : [xml('p', {}, xml('img', { src: `../${drawingPath(item.drawing!)}`, alt: words }))];
  const response = { 'response-identifier': 'RESPONSE' };
  if (kind === 'number') {
    const entry = xml('qti-text-entry-interaction', { ...response, 'expected-length': 10 });
    return [xml('p', {}, stem), xml('p', {}, entry, unit ? ` ${unitInWords(unit)}` : '')];
  }
  // Options have their places already: figures rise, and the key has its turn.
  const settings = { ...response, shuffle: false };
  if (kind === 'order') return [xml('qti-order-interaction', settings, prompt, choices)];
  return [
    ...shown,
    xml('qti-choice-interaction', { ...settings, 'max-choices': kind === 'many' ? 0 : 1 }, prompt, choices),
  ];
}

const response = xml('qti-variable', { identifier: 'RESPONSE' });
const correct = xml('qti-correct', { identifier: 'RESPONSE' });
const score = (points: 0 | 1): Xml =>
  xml('qti-set-outcome-value', { identifier: 'SCORE' }, xml('qti-base-value', { 'base-type': 'float' }, points));

/** An answer left out scores nothing, and is looked at first: some players take an empty box for a nought. */
function scoring({ kind, tolerance = 0 }: QuizItem): Xml {
  const near = { 'tolerance-mode': 'absolute', tolerance: `${tolerance} ${tolerance}` };
  const test =
    kind === 'number'
      ? xml('qti-equal', tolerance ? near : { 'tolerance-mode': 'exact' }, correct, response)
      : xml('qti-match', {}, response, correct);
  const condition = xml(
    'qti-response-condition',
    {},
    xml('qti-response-if', {}, xml('qti-is-null', {}, response), score(0)),
    xml('qti-response-else-if', {}, test, score(1)),
    xml('qti-response-else', {}, score(0)),
  );
  const why = xml(
    'qti-set-outcome-value',
    { identifier: 'WHY' },
    xml('qti-base-value', { 'base-type': 'identifier' }, 'shown'),
  );
  return xml('qti-response-processing', {}, condition, why);
}

function feedback({ why, source }: QuizItem): Xml {
  const attributes = { 'outcome-identifier': 'WHY', identifier: 'shown', 'show-hide': 'show' };
  return xml('qti-modal-feedback', attributes, xml('qti-content-body', {}, xml('p', {}, why), xml('p', {}, source)));
}
