import { readFile } from 'node:fs/promises';

/** Records whose examples nobody reads but the tests and the rule book. */
const unread = /[\\/]src[\\/]rules[\\/](?:relations|faults)[\\/][^\\/]+\.ts$/;
/** Of a limit the quiz asks with the facts that hold. */
const limits = /[\\/]src[\\/]rules[\\/]limits[\\/][^\\/]+\.ts$/;
const notAsked = ['boundary', 'breaks', 'cannotTell', 'also'];

/** For the browser: records without the examples that run them, which a phone would fetch for nothing. */
export const withoutExamples = {
  name: 'without-examples',
  setup(build) {
    const { transform } = build.esbuild;
    const plain = async (path) => (await transform(await readFile(path, 'utf8'), { loader: 'ts' })).code;
    build.onLoad({ filter: unread }, async ({ path }) => ({ contents: cut(await plain(path), 2, 'examples') }));
    build.onLoad({ filter: limits }, async ({ path }) => {
      const code = await plain(path);
      const [from, to] = placeOf(code, 2, 'examples') ?? [code.length, code.length];
      const examples = notAsked.reduce((text, name) => cut(text, 4, name), code.slice(from, to));
      return { contents: code.slice(0, from) + examples + code.slice(to) };
    });
  },
};

function cut(code, indent, name) {
  const place = placeOf(code, indent, name);
  return place ? code.slice(0, place[0]) + code.slice(place[1]) : code;
}

/** Where a field stands in code as esbuild prints it: at the beginning of a line, to the comma or the bracket behind its value. */
function placeOf(code, indent, name) {
  const found = new RegExp(`^ {${indent}}${name}: `, 'm').exec(code);
  if (!found) return undefined;
  let depth = 0;
  for (let at = found.index + found[0].length; at < code.length; at++) {
    const sign = code[at];
    if ('"\'`'.includes(sign)) at = afterString(code, at, sign);
    else if ('[{('.includes(sign)) depth += 1;
    else if (']})'.includes(sign)) depth -= 1;
    if (depth < 0 || (depth === 0 && code[at] === ',')) return [found.index, depth < 0 ? at : at + 1];
  }
  return undefined;
}

function afterString(code, from, sign) {
  for (let at = from + 1; at < code.length; at++) {
    if (code[at] === '\\') at += 1;
    else if (code[at] === sign) return at;
  }
  return code.length;
}
