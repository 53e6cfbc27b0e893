import { existsSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { kinds } from './kinds.mjs';

const widest = 120;

/** Where the index of all records is, from the root of the project. */
export const indexPath = 'src/rules/index.generated.ts';

/** `npm run generate`: writes the index of records, the cards and the rule book, where they are not already right. */
export async function generate(root) {
  // Loaded here, for they need packages that `npm run new` does without.
  const [{ generateCards }, { writeRulebook }] = await Promise.all([import('./cards.mjs'), import('./rulebook.mjs')]);
  writeIndex(root);
  await generateCards(root, recordIds);
  try {
    await writeRulebook(root);
  } catch (cause) {
    const hint = '`npm run check` names the fields that a record still lacks.';
    throw new Error(`The rule book could not be written: ${cause.message}. ${hint}`, { cause });
  }
  return 0;
}

/** Writes the index alone: a record that is not filled in yet has no page. */
export function writeIndex(root) {
  const text = renderIndex(root);
  const path = join(root, indexPath);
  if (existsSync(path) && readFileSync(path, 'utf8') === text) {
    process.stderr.write(`${indexPath} is up to date.\n`);
    return;
  }
  writeFileSync(`${path}.new`, text);
  renameSync(`${path}.new`, path);
  process.stderr.write(`Wrote ${indexPath}.\n`);
}

/** The index as it should be now. Two machines give the same text: files are taken by name, never by age or place on disk. */
export function renderIndex(root) {
  const folders = kinds.filter(({ folder }, at) => kinds.findIndex((kind) => kind.folder === folder) === at);
  const shown = folders
    .map((kind) => ({ ...kind, ids: recordIds(root, kind.folder) }))
    .filter(({ ids, later }) => !later || ids.length > 0);
  const imports = shown.flatMap(({ kind, folder, ids }) =>
    ids.map((id) => `import ${nameOf(kind, id)} from './${folder}/${id}.ts';`),
  );
  return [
    '// biome-ignore-all assist/source/organizeImports: written by `npm run generate`; do not edit.',
    ...imports,
    ...typeImports(shown),
    ...shown.map(
      ({ kind, folder, shape, ids }) =>
        `\n${list(
          folder,
          shape,
          ids.map((id) => nameOf(kind, id)),
        )}`,
    ),
    '',
  ].join('\n');
}

/** The ids of the records in a folder of src/rules, sorted. */
export function recordIds(root, folder) {
  const path = join(root, 'src/rules', folder);
  if (!existsSync(path)) return [];
  return readdirSync(path)
    .filter((name) => name.endsWith('.ts'))
    .map((name) => name.slice(0, -'.ts'.length))
    .sort();
}

function typeImports(shown) {
  const modules = [...new Set(shown.map(({ module }) => module))].sort();
  return modules.map((module) => {
    const names = shown.filter((kind) => kind.module === module).map(({ shape }) => shape);
    return wrapped('import type {', ` ${names.sort().join(', ')} `, names, `} from './${module}';`);
  });
}

function list(folder, shape, names) {
  return wrapped(`export const ${folder}: readonly ${shape}[] = [`, names.join(', '), names, '];');
}

/** One line while it fits, else one name a line, as the formatter has it. */
function wrapped(head, inOne, names, tail) {
  const line = `${head}${inOne}${tail}`;
  return line.length <= widest ? line : [head, ...names.map((name) => `  ${name},`), tail].join('\n');
}

/** lift-max of kind limit: limitLiftMax. */
function nameOf(kind, id) {
  return camelCase(`${kind}-${id}`);
}

/** choice-table: choiceTable. */
export function camelCase(words) {
  return words.replace(/-([a-z0-9])/g, (_, letter) => letter.toUpperCase());
}
