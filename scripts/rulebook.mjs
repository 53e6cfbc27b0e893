import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { compileFunction } from 'node:vm';
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
  const stale = [...pages].filter(([name, text]) => read(join(folder, name)) !== text);
  for (const [name, text] of stale) writeFileSync(join(folder, name), text);
  process.stderr.write(
    stale.length ? `Wrote ${stale.length} pages of ${rulebookPath}.\n` : `${rulebookPath} is up to date.\n`,
  );
}

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
  const { build } = await import('esbuild');
  const { outputFiles } = await build({
    stdin: { contents: entry, resolveDir: root, loader: 'ts' },
    absWorkingDir: root,
    bundle: true,
    write: false,
    format: 'cjs',
    platform: 'node',
    logLevel: 'warning',
  });
  const module = { exports: {} };
  compileFunction(outputFiles[0].text, ['module', 'exports'])(module, module.exports);
  return module.exports;
}

const read = (path) => (existsSync(path) ? readFileSync(path, 'utf8') : undefined);

const generated = 'Written by `npm run generate` from the records in `src/rules`; do not edit.';

function contents({ records }, folders) {
  return page('The rule book', [
    `${generated} Every record with its figure, its reason, its sources and how each was seen. [What is answerable](coverage.md) tells what the records can and cannot do.`,
    list(folders.map((folder) => `[${folder}](${folder}.md): ${records[folder].length}`)),
    [
      'In sentences, `{patch-depth}` stands for a figure of the job, `{on}` for the figure judged and `{limit}` for its bound;',
      'a clause in `[[…]]` falls away while one of its figures is unknown, or gives way to what follows `|`.',
      'A source is marked: read; restated by others; from memory, to be confirmed; common practice; or worked out.',
    ].join('\n'),
  ]);
}

function coverage({ records, knowledge }, folders) {
  const all = folders.flatMap((folder) => records[folder].map((record) => ({ folder, ...record })));
  const only = (...seen) => all.filter(({ sources }) => sources.every((source) => seen.includes(source.seen)));
  const sources = all.flatMap((record) => record.sources);
  const named = (some) => (some.length ? list(some.map(({ folder, id }) => link(folder, id))) : 'None.');
  const asked = records.quantities.filter(({ cues }) => cues?.length);
  return page('What is answerable', [
    generated,
    `## Counts\n\n${table(
      ['records', 'number', 'asked for by name'],
      folders.map((folder) => [
        folder,
        records[folder].length,
        records[folder].filter(({ cues }) => cues?.length).length,
      ]),
    )}`,
    table(
      ['how a source was seen', 'sources'],
      ['read', 'restated', 'memory', 'practice', 'derived'].map((how) => [
        how,
        sources.filter(({ seen }) => seen === how).length,
      ]),
    ),
    `## Quantities\n\nEvery figure: how it can be asked for, what is done while it is missing, and the relations that find it (in italics: turned round). ${asked.length} of ${records.quantities.length} can be asked for by name.\n\n${table(
      ['quantity', 'asked for', 'while it is missing', 'found by'],
      records.quantities.map((record) => quantityRow(record, knowledge)),
    )}`,
    `## Rests on memory only\n\nTo be confirmed before anyone leans on it.\n\n${named(only('memory'))}`,
    `## No published source\n\nCommon practice, or worked out here from it.\n\n${named(
      only('practice', 'derived').filter((record) => record.sources.some(({ seen }) => seen === 'practice')),
    )}`,
    `## Plain geometry or arithmetic\n\n${named(only('derived'))}`,
  ]);
}

function quantityRow({ id, cues, asks, question, default: taken }, { network }) {
  const methods = (network.finding.get(id) ?? []).map((at) => network.methods[at]);
  const ways = new Map(methods.map(({ relation, finds }) => [relation.id, relation.finds.id === finds]));
  const table = (way) => !network.methods.some(({ relation }) => relation.id === way && relation.by.op !== 'constant');
  const found = [...ways].map(([way, straight]) => (table(way) ? way : straight ? link('relations', way) : `*${way}*`));
  return [
    link('quantities', id),
    asks ?? (cues?.length ? 'yes' : 'no'),
    question ? 'asked back' : taken ? 'a default' : found.length ? 'worked out' : 'nothing',
    found.join(', ') || 'only when given',
  ];
}

const link = (folder, id) => `[${id}](${folder}.md#${id})`;
const list = (lines) => lines.map((line) => `- ${line}`).join('\n');
const table = (head, rows) =>
  [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
const page = (title, parts) => `${[`# ${title}`, ...parts].join('\n\n')}\n`;
