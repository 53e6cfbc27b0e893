/**
 * The line of a JSON text, from 1, on which the value at a place such as `tables.sign-spacing[0].a` begins; where there is
 * none, that of the nearest thing round it. The text must be JSON.
 */
export function lineOf(text: string, place: string): number {
  const wanted = place === '' ? [] : place.replace(/\[(\d{1,9})\]/g, '.$1').split('.');
  const tokens = text.matchAll(/"(?:[^"\\]|\\.)*"|[{}[\],:]|[^\s{}[\],:"]+/g);
  const open: { readonly isList: boolean; at: string }[] = [];
  let best = { depth: 0, from: 0 };
  let key = '';
  for (const { 0: token, index } of tokens) {
    const within = open.at(-1);
    const path = open.map(({ at }) => at);
    // How much of the wanted place leads here.
    const depth = path.findIndex((name, i) => name !== wanted[i]);
    const reached = depth === -1 ? path.length : depth;
    if (reached === path.length && reached > best.depth) best = { depth: reached, from: index };
    if (token === '{' || token === '[') open.push({ isList: token === '[', at: token === '[' ? '0' : '' });
    else if (token === '}' || token === ']') open.pop();
    else if (token === ',' && within?.isList) within.at = String(Number(within.at) + 1);
    else if (token === ',' && within) within.at = '';
    else if (token.startsWith('"') && within && !within.isList && within.at === '') key = JSON.parse(token) as string;
    else if (token === ':' && within) within.at = key;
  }
  return text.slice(0, best.from).split('\n').length;
}
