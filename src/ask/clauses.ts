/**
 * Fills a template of the work. `{name}` is a figure; `[[…]]` a clause that falls away when one of its figures is unknown;
 * `[[…|…]]` has a clause that then stands in its place. A figure outside any clause that is unknown is worded `unsettled`.
 * Clauses do not nest. Spaces left by what fell away are closed up.
 */
export function fillClauses(
  template: string,
  figures: (name: string) => string | undefined,
  unsettled: string,
): string {
  let text = '';
  for (const piece of parsed(template).pieces) {
    if (typeof piece === 'string') text += piece;
    else if ('name' in piece) text += figures(piece.name) ?? unsettled;
    else text += fillAll(piece.clause, figures) ?? fillAll(piece.otherwise, figures) ?? '';
  }
  return tidied(text);
}

/** Names of the figures a template speaks of. */
export const figuresIn = (template: string): readonly string[] => parsed(template).names;

/** A template taken apart: what stands as it is, figures, and clauses, which hold no clauses of their own. */
interface Template {
  readonly pieces: readonly (Plain | { readonly clause: readonly Plain[]; readonly otherwise: readonly Plain[] })[];
  readonly names: readonly string[];
}

type Plain = string | { readonly name: string };

/** Templates taken apart before: they are of the records, so there are only so many. */
const before = new Map<string, Template>();

function parsed(template: string): Template {
  const known = before.get(template);
  if (known) return known;
  const pieces = template.split(clause).flatMap((part, at): Template['pieces'] => {
    if (at % 2 === 0) return plainIn(part);
    const [text = '', otherwise = ''] = part.split('|');
    return [{ clause: plainIn(text), otherwise: plainIn(otherwise) }];
  });
  const made = { pieces, names: Array.from(template.matchAll(place), ([, name]) => name!) };
  before.set(template, made);
  return made;
}

/** Text and figures by turns. */
const plainIn = (text: string): Plain[] =>
  text.split(place).flatMap((part, at): Plain[] => (at % 2 ? [{ name: part }] : part ? [part] : []));

const clause = /\[\[([^[\]]{1,400})\]\]/g;
const place = /\{([a-z0-9:-]{1,60})\}/g;

/** A clause with its figures; undefined when one of them is unknown. */
function fillAll(pieces: readonly Plain[], figures: (name: string) => string | undefined): string | undefined {
  let text = '';
  for (const piece of pieces) {
    const said = typeof piece === 'string' ? piece : figures(piece.name);
    if (said === undefined) return undefined;
    text += said;
  }
  return text;
}

const tidied = (text: string): string =>
  text
    .replace(/ {2,}/g, ' ')
    .replace(/ (?=[.,;:])/g, '')
    .trim();
