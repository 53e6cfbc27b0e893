import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { compileFunction } from 'node:vm';
import { build } from 'esbuild';
import { kinds } from './kinds.mjs';
import { pageOf, pen } from './rulebook-pages.mjs';

/** Where the rule book is, from the root of the project. */
export const rulebookPath = 'docs/rulebook';

const entry = `
  export * as records from './src/rules/index.generated.ts';
  export { knowledge } from './src/rules/knowledge.ts';
  export { inWords } from './src/calc/expression.ts';
  export { toBase } from './src/calc/quantity.ts';
  export { sayFigure } from './src/calc/wording.ts';
  export { saySource } from './src/ask/say.ts';
`;

/** Writes the rule book where it is not already right, and takes away pages that it no longer has. */
export async function writeRulebook(root) {
  if (!existsSync(join(root, 'src/rules/knowledge.ts'))) return;
  const folder = join(root, rulebookPath);
  const pages = await renderRulebook(root);
  mkdirSync(folder, { recursive: true });
  for (const name of readdirSync(folder)) if (!pages.has(name)) rmSync(join(folder, name));
  const stale = [...pages].filter(([name, text]) => !isRight(join(folder, name), text));
  for (const [name, text] of stale) writeFileSync(join(folder, name), text);
  process.stderr.write(
    stale.length ? `Wrote ${stale.length} pages of ${rulebookPath}.\n` : `${rulebookPath} is up to date.\n`,
  );
}

const isRight = (path, text) => existsSync(path) && readFileSync(path, 'utf8') === text;

/** The pages of the rule book as they should be now, by file name. The same records give the same text. */
export async function renderRulebook(root) {
  const book = await load(root);
  const write = pen(book);
  const folders = [...new Set(kinds.map(({ folder }) => folder))].filter((folder) => book.records[folder]?.length);
  const pages = new Map(folders.map((folder) => [`${folder}.md`, pageOf(folder, book, write)]));
  pages.set('coverage.md', coverage(book, folders));
  pages.set('README.md', contents(book, folders));
  return pages;
}

/** The records as they stand, with the words the program itself has for figures, formulas and sources. */
async function load(root) {
  const stdin = { contents: entry, resolveDir: root, loader: 'ts' };
  const { outputFiles } = await build({ stdin, bundle: true, write: false, format: 'cjs', logLevel: 'warning' });
  const module = { exports: {} };
  compileFunction(outputFiles[0].text, ['module', 'exports'])(module, module.exports);
  return module.exports;
}

const generated = 'Written by `npm run generate` from the records in `src/rules`; do not edit.';

function contents({ records }, folders) {
  return page('The rule book', [
    `${generated} Every record with its figure, its reason, its sources and how each was seen. [What is answerable](coverage.md) tells what the records can and cannot do.`,
    list(folders.map((folder) => `[${folder}](${folder}.md): ${records[folder].length}`)),
    'In sentences, `{patch-depth}` stands for a figure of the job; a clause in `[[…]]` falls away while one of its figures is unknown, or gives way to what follows `|`.',
    'A source is marked: read; restated by others; from memory, to be confirmed; common practice; or worked out.',
  ]);
}

function coverage({ records, knowledge }, folders) {
  const all = folders.flatMap((folder) => records[folder].map((record) => ({ folder, ...record })));
  const only = (...seen) => all.filter(({ sources }) => sources.every((source) => seen.includes(source.seen)));
  const seenSo = (how) => all.flatMap((record) => record.sources).filter(({ seen }) => seen === how).length;
  const named = (some) => list(folders.flatMap((folder) => ofFolder(folder, some)));
  const shownOnly = [...records.limits, ...records.practices].filter((rule) => !isAsked(rule));
  return page('What is answerable', [
    generated,
    `## Counts\n\n${table(
      ['records', 'number', 'asked for by name'],
      folders.map((folder) => [folder, records[folder].length, records[folder].filter(isAsked).length || '–']),
    )}`,
    table(
      ['how a source was seen', 'sources'],
      ['read', 'restated', 'memory', 'practice', 'derived'].map((how) => [how, seenSo(how)]),
    ),
    `## Quantities\n\nEvery figure: how it can be asked for, what is done while it is missing, and the relations that find it (in italics: turned round). A dash: no question leads to it.\n\n${table(
      ['quantity', 'asked for', 'while it is missing', 'found by'],
      records.quantities.map((record) => quantityRow(record, knowledge)),
    )}`,
    `## Rules that stand beside an answer only\n\nNo question leads to them.\n\n${shownOnly.map(({ id }) => id).join(', ')}`,
    `## Rests on memory only\n\nTo be confirmed before anyone leans on it.\n\n${named(only('memory'))}`,
    `## No published source\n\nCommon practice, or worked out here from it.\n\n${named(
      only('practice', 'derived').filter((record) => record.sources.some(({ seen }) => seen === 'practice')),
    )}`,
    `## Plain geometry or arithmetic\n\n${named(only('derived'))}`,
  ]);
}

function quantityRow({ id, cues, asks, question, default: taken }, { network, relations }) {
  const methods = (network.finding.get(id) ?? []).map((at) => network.methods[at]);
  const ways = new Map(methods.map(({ relation, finds }) => [relation.id, relation.finds.id === finds]));
  const row = (way) => relations.get(way).by.op === 'constant';
  const found = [...ways].map(([way, straight]) => (row(way) ? way : straight ? link('relations', way) : `*${way}*`));
  return [
    link('quantities', id),
    asks ?? (cues?.length ? 'yes' : '–'),
    question ? 'asked back' : taken ? 'a default' : found.length ? 'worked out' : 'nothing',
    found.join(', ') || 'only when given',
  ];
}

const ofFolder = (folder, some) => {
  const links = some.filter((record) => record.folder === folder).map(({ id }) => link(folder, id));
  return links.length ? [`${folder}: ${links.join(', ')}`] : [];
};
const isAsked = ({ cues }) => cues?.length > 0;
const link = (folder, id) => `[${id}](${folder}.md#${id})`;
const list = (lines) => lines.map((line) => `- ${line}`).join('\n');
const table = (head, rows) =>
  [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
const page = (title, parts) => `${[`# ${title}`, ...parts].join('\n\n')}\n`;
