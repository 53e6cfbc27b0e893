import type { QuizSet } from '../build.ts';
import { asCsv } from './csv.ts';
import { asJson } from './json.ts';
import { qtiPackage } from './qti-package.ts';
import { asText } from './text.ts';

export const formats = ['json', 'csv', 'spreadsheet', 'qti3', 'text'] as const;
export type FileFormat = (typeof formats)[number];
export const isFormat = (text: string): text is FileFormat => formats.includes(text as FileFormat);

/** A set as a file: its name, its media type and its content. */
export interface QuizFile {
  readonly name: string;
  readonly type: string;
  readonly content: string | Uint8Array<ArrayBuffer>;
}

/** A set in a format. The name says what and which it is, in letters that every machine takes. */
export function fileOf(set: QuizSet, format: FileFormat): QuizFile {
  const stem = `${set.title} ${set.seed}`
    .toLowerCase()
    .replace(/[^a-z0-9]{1,200}/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60);
  const text = (ending: string, type: string, content: string): QuizFile => ({
    name: `quiz-${stem}.${ending}`,
    type: `${type}; charset=utf-8`,
    content,
  });
  if (format === 'json') return text('json', 'application/json', asJson(set));
  if (format === 'text') return text('txt', 'text/plain', asText(set, { key: true }));
  if (format === 'qti3')
    return { name: `quiz-${stem}.zip`, type: 'application/zip', content: new Uint8Array(qtiPackage(set)) };
  return text('csv', 'text/csv', asCsv(set, { spreadsheet: format === 'spreadsheet' }));
}
