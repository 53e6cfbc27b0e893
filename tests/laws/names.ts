import type { SourceFile } from './sources.ts';
import { type Node, parse, placeOf, walk } from './syntax.ts';

/**
 * Places where a source uses one of these global names. A name that the file declares itself (a variable, a parameter, an
 * import) is its own, and so is a property (`source.document`).
 */
export function usesOf(file: SourceFile, globals: ReadonlySet<string>): string[] {
  const program = parse(file);
  const own = declaredIn(program);
  const places: string[] = [];
  walk(program, (node, parent, field) => {
    const name = node.name as string;
    if (node.type !== 'Identifier' || !globals.has(name) || own.has(name) || isLabel(parent, field)) return;
    places.push(`${placeOf(file, node)} ${name}`);
  });
  return places;
}

/** A property's name, which stands for itself and not for a variable. */
function isLabel(parent: Node | undefined, field: string | undefined): boolean {
  if (!parent || parent.computed === true) return false;
  if (field === 'property') return true;
  return field === 'key' && parent.shorthand !== true;
}

function declaredIn(program: Node): Set<string> {
  const names = new Set<string>();
  const addFrom = (pattern: unknown): void => {
    if (!pattern) return;
    walk(pattern as Node, (node, parent, field) => {
      const isDefault = parent?.type === 'AssignmentPattern' && field === 'right';
      if (node.type === 'Identifier' && !isDefault && !isLabel(parent, field)) names.add(node.name as string);
    });
  };
  walk(program, (node) => {
    if (node.type === 'VariableDeclarator') addFrom(node.id);
    if (node.type === 'CatchClause') addFrom(node.param);
    if (node.type.startsWith('Import') && node.local) addFrom(node.local);
    if (/Function/.test(node.type)) {
      addFrom(node.id);
      for (const param of node.params as Node[]) addFrom(param);
    }
  });
  return names;
}
