import { metricUnits } from './rate-words.ts';
import type { Figure, Item, ReadingOptions } from './reading.ts';

type Draft = { -readonly [K in keyof Figure]: Figure[K] };

/** What the whole text says about each figure: whether its m is a metre, and whether it stands each or apart. */
export function settle(items: Item[], options: ReadingOptions): Item[] {
  const metric = options.units === 'metric' || items.some((item) => item.kind === 'figure' && isMetric(item));
  for (let k = 0; k < items.length; k++) {
    const item = items[k]!;
    if (item.kind !== 'figure') continue;
    const figure: Draft = item;
    if (metric && (figure.unclear === 'm' || figure.unclear === 't')) delete figure.unclear;
    if (options.units === 'metric' && figure.unit === 'degF' && figure.unclear === 'deg') figure.unit = 'degC';
    const manner = mannerOf(items, k);
    if (manner) setManner(items, k, figure, manner);
  }
  return items;
}

/** A metre that may be a mile is no witness for another. */
function isMetric(figure: Figure): boolean {
  if (figure.unit === undefined) return false;
  return metricUnits.has(figure.unit) || (figure.unit === 'm' && figure.unclear === undefined);
}

/** After `each` these are what the figure is for, not the things counted before it: 12 miles each way. */
const shared = new Set([
  'way',
  'side',
  'end',
  'direction',
  'lane',
  'lift',
  'pass',
  'day',
  'load',
  'time',
  'truck',
  'shift',
]);

/** "10 ft each", "each 10 ft", "cones every 20 feet", "20 ft apart", "20 ft on center". */
function mannerOf(items: readonly Item[], k: number): Figure['manner'] | undefined {
  const [before, after] = [wordAt(items, k - 1), wordAt(items, k + 1)];
  if (after === 'oc' || (after === 'o' && wordAt(items, k + 3) === 'c')) return 'apart';
  if (after === 'apart' || (after === 'on' && wordAt(items, k + 2).startsWith('cent'))) return 'apart';
  if (before === 'every' || before === 'spaced' || (before === 'at' && wordAt(items, k - 2) === 'spaced'))
    return 'apart';
  if (before === 'cada') return 'apart';
  if (after === 'each' && shared.has(wordAt(items, k + 2))) return undefined;
  if (after === 'each' || after === 'ea' || after === 'apiece' || before === 'each') return 'each';
  return after === 'cada' && wordAt(items, k + 2).startsWith('un') ? 'each' : undefined;
}

function wordAt(items: readonly Item[], k: number): string {
  const item = items[k];
  return item?.kind === 'word' ? item.text : '';
}

/** What is said of the last factor of a group is said of the others before it: 10 x 20 ft each. */
function setManner(items: readonly Item[], k: number, figure: Draft, manner: NonNullable<Figure['manner']>): void {
  figure.manner = manner;
  for (let i = k - 1; i >= 0 && (figure.index ?? 0) > 0; i--) {
    const item = items[i]!;
    if (item.kind === 'figure' && item.group !== figure.group) return;
    if (item.kind === 'figure') (item as Draft).manner = manner;
    if (item.kind === 'figure' && item.index === 0) return;
  }
}
