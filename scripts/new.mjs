import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { camelCase, writeIndex } from './generate.mjs';
import { idPattern, kinds } from './kinds.mjs';
import { fieldsOf } from './shape-fields.mjs';

const widest = 120;

/**
 * `npm run new -- limit lift-something`: writes a stub of that kind of record. Every field of its shape is named in a
 * comment, with what it is for (`?`: may be left out); the compiler names those that are still missing.
 */
export function newRecord(root, [kindWord, id]) {
  const shapes = shapesIn(root);
  const hasShape = (kind) => new RegExp(`interface ${shapeOf(kind)}\\b`).test(shapes);
  const kind = kinds.find(({ kind }) => kind === kindWord) ?? kinds.find(({ folder }) => folder === kindWord);
  if (!kind) {
    const known = kinds.filter(hasShape).map((one) => one.kind);
    throw new Error(
      `${kindWord ? `There is no kind of record called ${kindWord}. ` : ''}Say the kind and the id, as in ` +
        `\`npm run new -- limit lift-max\`. Kinds: ${known.join(', ')}.`,
    );
  }
  if (!id || !idPattern.test(id)) {
    throw new Error(
      `${id ? `${id} is no id. ` : 'Say the id too. '}An id is lower case words joined by hyphens, as in lift-max.`,
    );
  }
  if (!hasShape(kind)) {
    throw new Error(
      `src/rules/${kind.module} has no ${shapeOf(kind)} yet: write the shape of a ${kind.kind} there first.`,
    );
  }
  const path = join('src/rules', kind.folder, `${id}.ts`);
  if (existsSync(join(root, path))) throw new Error(`There is a ${kind.kind} ${id} already: ${path}.`);

  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), stub(kind, id, fieldsOf(shapes, shapeOf(kind))));
  writeIndex(root);
  process.stdout.write(
    `Wrote ${path}. Next:\n` +
      '  1. Fill in the fields named in its comments, and take the comments out.\n' +
      '  2. npm run check: names the fields still missing, and those of the wrong dimension.\n' +
      '  3. npm test -- tests/rules tests/laws: runs its examples and the laws.\n',
  );
  return 0;
}

/** The text of a record that has its id and nothing else. */
export function stub({ kind, module }, id, fields) {
  const maker = camelCase(kind);
  const lines = fields.filter(({ name }) => name !== 'id').flatMap(hint);
  return [
    `import { ${maker} } from '../${module}';`,
    '',
    `export default ${maker}({`,
    `  id: '${id}',`,
    ...lines,
    '});',
    '',
  ].join('\n');
}

/** A field as the shape has it, then what it is for. */
function hint({ name, type, optional, doc }) {
  const words = `${name}${optional ? '?' : ''}: ${type.replaceAll('readonly ', '')}. ${doc}`.trim().split(' ');
  const lines = ['  //'];
  for (const word of words) {
    if (lines[lines.length - 1].length + 1 + word.length > widest) lines.push('  //  ');
    lines[lines.length - 1] += ` ${word}`;
  }
  return lines;
}

const shapeOf = ({ fields, shape }) => fields ?? shape;

/** All sources that hold shapes as one text: a shape may extend one of another file. */
function shapesIn(root) {
  const folder = join(root, 'src/rules');
  return readdirSync(folder)
    .filter((name) => name.startsWith('shapes'))
    .map((name) => readFileSync(join(folder, name), 'utf8'))
    .join('\n');
}
