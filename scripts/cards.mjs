import { existsSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { compileFunction } from 'node:vm';
import { build } from 'esbuild';
import { Lexer } from 'marked';
import { frontMatter, readFrontMatter } from './front-matter.mjs';
import { idPattern, kinds } from './kinds.mjs';

/** Where the cards are, from the root of the project: written from content/ for the code that answers. */
const cardsPath = 'src/ask/cards.generated.ts';
/** Where those are that tell of an emergency: they answer before all else, so they stand in a file that is there first. */
const emergenciesPath = 'src/ask/emergencies.generated.ts';

const fewestWords = 40;
const mostWords = 120;

/**
 * Writes the cards, when there are any and they are not already right. `recordIds` lists the records of a folder. Throws an
 * Error that names the file and the fix.
 */
export async function generateCards(root, recordIds) {
  if (!existsSync(join(root, 'content'))) return;
  for (const [name, text] of Object.entries(await renderCards(root, recordIds))) {
    const path = join(root, name);
    if (existsSync(path) && readFileSync(path, 'utf8') === text) continue;
    writeFileSync(`${path}.new`, text);
    renameSync(`${path}.new`, path);
    process.stderr.write(`Wrote ${name}.\n`);
  }
}

/**
 * The files of cards as they should be now, by their paths; two machines give the same text. Beside every card stand the words it is found by,
 * read as a question is read: reading them all at the first question would take longer than all the rest of the answer.
 */
export async function renderCards(root, recordIds) {
  const names = readdirSync(join(root, 'content'))
    .filter((name) => name.endsWith('.md'))
    .sort();
  const reader = await load(root);
  const known = { ...knownNames(root, names, recordIds), nearest: reader.nearest };
  const cards = names.map((name) => readCard(name, readFileSync(join(root, 'content', name), 'utf8'), known));
  const words = cards.map(({ id, title, asks }) => [
    id,
    [title, ...asks].map((text) => reader.wordsOf(text).join(' ')),
  ]);
  const emergencies = cards.filter(({ emergency }) => emergency);
  const listed = cards.map((card) =>
    card.emergency ? `emergencies[${emergencies.indexOf(card)}]!` : JSON.stringify(card, null, 2),
  );
  const head = [
    '// biome-ignore-all format: written by `npm run generate`; do not edit.',
    "import type { Card } from './search/card.ts';",
  ];
  return {
    [emergenciesPath]: [
      ...head,
      '',
      `export const emergencies: readonly Card[] = ${JSON.stringify(emergencies, null, 2)};`,
      '',
    ].join('\n'),
    [cardsPath]: [
      head[0],
      "import { emergencies } from './emergencies.generated.ts';",
      head[1],
      '',
      `export const cards: readonly Card[] = [\n${listed.join(',\n')},\n];`,
      '',
      '/** The words of the title, then of each way of asking, as a question is read. */',
      `export const wordsOfCards: Readonly<Record<string, readonly string[]>> = ${JSON.stringify(Object.fromEntries(words), null, 1)};`,
      '',
    ].join('\n'),
  };
}

/** One card from its file. `known` are the names its links and figures may use (`knownNames`). */
export function readCard(name, text, known) {
  const fault = (what) => new Error(`content/${name}: ${what}`);
  const { fields, body } = readFrontMatter(text, fault);
  const checked = frontMatter.safeParse(fields);
  if (!checked.success) {
    const [issue] = checked.error.issues;
    throw fault(`${issue.path.join(' ') || 'front matter'}: ${issue.message}`);
  }
  const { id, title, kind, asks, links, seen, rank, first, happening } = checked.data;
  if (name !== `${id}.md`) throw fault(`id: the card ${id} belongs in content/${id}.md`);
  if (!idPattern.test(id)) throw fault(`id: an id is lower case words joined by hyphens, as in rain-on-row`);
  for (const link of links)
    if (!known.addresses.includes(link)) throw fault(unknown('links', link, known.addresses, known));
  const plain = plainText(body, fault);
  for (const [, place] of plain.matchAll(/\{([^}]{0,80})\}/g)) {
    if (!known.figures.includes(place)) throw fault(unknown('figure', place, known.figures, known));
  }
  if (/[{}]/.test(plain.replace(/\{[^{}]{0,80}\}/g, '')))
    throw fault('a brace is open: figures stand as {unit-weight}');
  if (kind === 'emergency' && plain.includes('{')) throw fault('an emergency waits for no figure: write it out');
  const words = plain.split(/\s+/).length;
  if (words < fewestWords || words > mostWords) {
    throw fault(`it has ${words} words; a card has ${fewestWords} to ${mostWords}`);
  }
  const emergency = rank === undefined ? {} : { emergency: { rank, first, cues: happening } };
  return { id, title, kind, text: plain, asks, links, seen: seen.map(basis), ...emergency };
}

/** What links and figures of a card may name: every record and card by its address, every figure by its place. */
export function knownNames(root, cardFiles, recordIds) {
  const addresses = kinds.flatMap(({ kind, folder }) => recordIds(root, folder).map((id) => `${kind}/${id}`));
  const cards = cardFiles.map((name) => `card/${name.slice(0, -'.md'.length)}`);
  const ends = (words, folder) => words.flatMap((end) => recordIds(root, folder).map((id) => `${end}${id}`));
  return {
    addresses: [...addresses, ...cards],
    figures: [...ends(['', 'low:', 'high:'], 'quantities'), ...ends(['max:', 'min:', 'stop:'], 'limits')],
  };
}

/** The paragraphs of a card, one a line. Anything but plain words, strong and emphasis is refused: a card is read aloud. */
function plainText(body, fault) {
  const inline = (tokens) =>
    tokens
      .map((token) => {
        if (token.type === 'text' || token.type === 'escape') return token.text;
        if (token.type === 'strong' || token.type === 'em') return inline(token.tokens);
        throw fault(`"${token.raw.trim().slice(0, 40)}" is ${token.type}: a card has plain paragraphs only`);
      })
      .join('');
  return new Lexer({ gfm: false })
    .lex(body)
    .filter((token) => token.type !== 'space')
    .map((token) => {
      if (token.type === 'paragraph') return inline(token.tokens).replace(/\s+/g, ' ').trim();
      throw fault(`"${token.raw.trim().slice(0, 40)}" is ${token.type}: a card has plain paragraphs only`);
    })
    .join('\n');
}

/** `published: FM 5-434, ch. 4`: a mark and its document. */
function basis(line) {
  const [mark, document] = line.split(/: (.*)/s);
  return document ? { mark, document } : { mark };
}

function unknown(field, name, names, { nearest }) {
  const near = nearest(name, names);
  return `${field}: there is no ${name}${near ? `; did you mean ${near}?` : ''}`;
}

const entry = `
  export { nearest } from './src/rules/nearest.ts';
  import { engine } from './src/ask/engine.ts';
  import { indexed } from './src/ask/search/terms.ts';
  export const wordsOf = (text) => indexed(text, engine);
`;

/** What the program itself reads words with. */
async function load(root) {
  const stdin = { contents: entry, resolveDir: root, loader: 'ts' };
  const { outputFiles } = await build({ stdin, bundle: true, write: false, format: 'cjs', logLevel: 'warning' });
  const module = { exports: {} };
  compileFunction(outputFiles[0].text, ['module', 'exports'])(module, module.exports);
  return module.exports;
}
