import { parseAst } from 'vitest/node';
import type { SourceFile } from './sources.ts';

/** A node of the syntax tree; what it holds depends on its type. */
export interface Node {
  readonly type: string;
  readonly start: number;
  readonly [field: string]: unknown;
}

/** The syntax tree of a source. Throws when it cannot be parsed. */
export function parse({ path, text }: SourceFile): Node {
  const lang = /\.[cm]?js$/.test(path) ? 'js' : path.endsWith('x') ? 'tsx' : 'ts';
  return parseAst(text, { lang }) as unknown as Node;
}

/** Visits every node, parents first, with the field of the parent it stands in. */
export function walk(node: Node, visit: (node: Node, parent?: Node, field?: string) => void): void {
  const step = (at: Node, parent?: Node, field?: string): void => {
    visit(at, parent, field);
    for (const [name, value] of Object.entries(at)) {
      for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) step(child, at, name);
    }
  };
  step(node);
}

/** `path:line` of a node, to be found in an editor. */
export function placeOf({ path, text }: SourceFile, { start }: Node): string {
  return `${path}:${text.slice(0, start).split('\n').length}`;
}

/** What a source imports or re-exports, those of types alone included; an import of a computed name is `?`. */
export function importsOf(file: SourceFile): string[] {
  const found = new Set<string>();
  walk(parse(file), (node) => {
    if (!importing.has(node.type)) return;
    const source = node.source as Node | null | undefined;
    if (source) found.add(typeof source.value === 'string' ? source.value : '?');
  });
  return [...found];
}

const importing = new Set([
  'ImportDeclaration',
  'ExportNamedDeclaration',
  'ExportAllDeclaration',
  'ImportExpression',
  'TSImportType',
]);

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';
}
