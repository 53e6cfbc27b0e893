import { acrossWords } from './near-words.ts';
import type { Side } from './quantity-options.ts';
import type { Item } from './reading.ts';

/** The one side said before, with no x between: in "12 wide 300 inch deep" the 300 stands beside 12. Undefined when there are more. */
export function looseSide(items: readonly Item[]): Side | undefined {
  let k = items.length - 1;
  if (isComma(items[k])) k--;
  if (!isAcross(items[k])) return undefined;
  const side = items[k - 1];
  if (side?.kind !== 'figure' || side.group !== undefined || isAcross(items[k - 2])) return undefined;
  if (isComma(items[k - 2]) && isAcross(items[k - 3])) return undefined;
  return { number: side.number, bare: side.unit === undefined, count: 1, joined: false };
}

function isAcross(item: Item | undefined): boolean {
  return item?.kind === 'word' && acrossWords.has(item.text);
}

function isComma(item: Item | undefined): boolean {
  return item?.kind === 'mark' && item.text === ',';
}
