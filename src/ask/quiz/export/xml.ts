/** A piece of XML, ready to be written. */
export interface Xml {
  readonly text: string;
}

type Inside = Xml | string | number | undefined | readonly Inside[];

/** An element with its attributes and what is inside it; text and attribute values are escaped. */
export function xml(
  name: string,
  attributes: Readonly<Record<string, string | number | boolean>> = {},
  ...inside: Inside[]
): Xml {
  const head = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(String(value))}"`);
  const body = written(inside);
  return { text: body === '' ? `<${name}${head.join('')}/>` : `<${name}${head.join('')}>${body}</${name}>` };
}

/** A whole document. */
export const xmlDocument = (root: Xml): string => `<?xml version="1.0" encoding="UTF-8"?>\n${root.text}\n`;

function written(inside: Inside): string {
  if (inside === undefined) return '';
  if (typeof inside === 'string' || typeof inside === 'number') return escaped(String(inside));
  return 'text' in inside ? inside.text : inside.map(written).join('');
}

const marks: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text with what XML reads as markup escaped, and what XML 1.0 does not allow left out. */
function escaped(text: string): string {
  return text.replace(/[^\P{Cc}\t\n\r]|\p{Cs}|[\ufffe\uffff]/gu, '').replace(/[&<>"]/g, (mark) => marks[mark]!);
}
