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
  const filled = template.replace(clause, (_, body: string) => {
    const [text, otherwise = ''] = body.split('|') as [string, string?];
    return fillAll(text, figures) ?? fillAll(otherwise, figures) ?? '';
  });
  return tidied(filled.replace(place, (_, name: string) => figures(name) ?? unsettled));
}

/** Names of the figures a template speaks of. */
export function figuresIn(template: string): string[] {
  return [...template.matchAll(place)].map(([, name]) => name!);
}

const clause = /\[\[([^[\]]{1,400})\]\]/g;
const place = /\{([a-z0-9:-]{1,60})\}/g;

/** A clause with its figures; undefined when one of them is unknown. */
function fillAll(text: string, figures: (name: string) => string | undefined): string | undefined {
  if (figuresIn(text).some((name) => figures(name) === undefined)) return undefined;
  return text.replace(place, (_, name: string) => figures(name)!);
}

const tidied = (text: string): string =>
  text
    .replace(/ {2,}/g, ' ')
    .replace(/ (?=[.,;:])/g, '')
    .trim();
