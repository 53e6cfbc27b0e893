/** A tag as our views write it: every attribute in double quotes, with no mark in it. */
const tag = /<\/?([a-zA-Z][\w-]*)((?:\s+[^\s"'<>/=]+(?:="[^"<>]*")?)*)\s*\/?>/g;
const attribute = /\s([^\s"'<>/=]+)(?:="([^"]*)")?/g;
const never = ['iframe', 'object', 'embed', 'base', 'style', 'img', 'template'];
const stays = /^(?:\/(?!\/)|#|\?|http:\/\/localhost\/|$)/;

/** What a page may not hold: a mark that is no tag of ours, anything that acts but our own scripts, a link or form that leads away. */
export function wrongIn(html: string): string[] {
  const wrong: string[] = [];
  const rest = html.replace(/^<!DOCTYPE html>/i, '').replace(tag, (_whole, name: string, attributes: string) => {
    const named = new Map(
      [...attributes.matchAll(attribute)].map(([, key, value]) => [key!.toLowerCase(), value ?? '']),
    );
    if (never.includes(name.toLowerCase())) wrong.push(`<${name}>`);
    if (named.has('http-equiv')) wrong.push('<meta http-equiv>');
    if (name === 'script' && attributes !== '' && !named.get('src')?.startsWith('/assets/'))
      wrong.push('a script of its own');
    for (const [key, value] of named) {
      if (/^on|^style$|^srcdoc$/.test(key)) wrong.push(`${key}=${value.slice(0, 40)}`);
      if (['href', 'src', 'action', 'formaction', 'xlink:href'].includes(key) && !stays.test(value))
        wrong.push(`${key}=${value.slice(0, 60)}`);
    }
    return '';
  });
  if (/<script(?![^>]*src=)|<script[^>]*>[^<]/.test(html)) wrong.push('a script in the page');
  const stray = rest.indexOf('<');
  if (stray >= 0) wrong.push(`a mark: ${rest.slice(stray, stray + 60)}`);
  return wrong;
}

/** Cells of a CSV file that a spreadsheet would work out: a sign for it at the start, and no figure behind. */
export function formulasIn(csv: string): string[] {
  const cells = csv.replace(/^\ufeff/, '').match(/"(?:[^"]|"")*"|[^",\r\n]+/g) ?? [];
  return cells
    .map((cell) => cell.replace(/^"|"$/g, ''))
    .filter((cell) => /^[=+\-@\t\r]/.test(cell) && !/^-?[\d.]+(?:e[+-]?\d+)?(?: [^ ]+)?$/.test(cell));
}
