import { plainWhole } from './fraction.ts';
import { at, type Tokens } from './lexer.ts';

/** A station or milepost alone is a place (a name); two of one kind joined are the stretch between them. */
export interface PlaceRead {
  readonly next: number;
  readonly sort: 'station' | 'milepost';
  /** The length between two places. */
  readonly span?: { readonly number: number; readonly unit: 'ft' | 'm' | 'mi' };
}

interface Spot {
  readonly next: number;
  readonly number: number;
  readonly unit: 'ft' | 'm' | 'mi';
}

const stationWords = new Set(['sta', 'station', 'stations', 'stas', 'est', 'estación', 'estacion', 'km']);
const postWords = new Set(['marker', 'markers', 'post', 'posts']);
const mileWords = new Set(['mp', 'milepost', 'mileposts', 'milemarker', 'mile']);
const joins = new Set(['to', '-', 'thru', 'through', 'and', '&', 'a', 'hasta', 'y']);

/** Words a place can begin with. */
export const placeStarts: readonly string[] = [...stationWords, ...mileWords, 'mm'];

/** The place or stretch that begins at token `i`: `sta 12+50`, `12+50 to 14+00`, `km 1+200`, `MP 12.3 to 12.8`. */
export function readPlace(tokens: Tokens, i: number): PlaceRead | undefined {
  const first = at(tokens, i);
  if (first.kind !== 'number' && first.kind !== 'letters') return undefined;
  const station = readStation(tokens, i);
  if (station) return readSpan(tokens, i, station, 'station', readStation);
  const post = readMilepost(tokens, i);
  return post && readSpan(tokens, i, post, 'milepost', (t, k) => readMilepost(t, k) ?? barePost(t, k));
}

type ReadSpot = (tokens: Tokens, i: number) => Spot | undefined;

function readSpan(tokens: Tokens, i: number, from: Spot, sort: PlaceRead['sort'], read: ReadSpot): PlaceRead {
  const join = at(tokens, from.next).text;
  const between = at(tokens, i - 1).text === 'between' || at(tokens, i - 1).text === 'entre';
  const joinable = joins.has(join) && (between || (join !== 'and' && join !== '&' && join !== 'y'));
  const to = joinable ? read(tokens, from.next + 1) : undefined;
  if (!to || to.unit !== from.unit) return { next: from.next, sort };
  return { next: to.next, sort, span: { number: gap(from.number, to.number), unit: from.unit } };
}

/** The distance, free of the dust of decimals (12.8 - 12.3): places are written to a thousandth at most. */
function gap(a: number, b: number): number {
  return Math.round(Math.abs(b - a) * 1e4) / 1e4;
}

/** Two digits after the plus are feet of a 100 ft station, three are metres of a kilometre. */
function readStation(tokens: Tokens, i: number): Spot | undefined {
  let start = i;
  if (at(tokens, i).kind === 'letters') {
    if (!stationWords.has(at(tokens, i).text)) return undefined;
    start = at(tokens, i + 1).text === '.' || at(tokens, i + 1).text === '-' ? i + 2 : i + 1;
  }
  const whole = at(tokens, start);
  const plus = at(tokens, start + 1);
  const rest = at(tokens, start + 2);
  if (plus.text !== '+' || plus.gap || rest.gap || !plainWhole(whole) || rest.kind !== 'number') return undefined;
  const point = rest.raw.indexOf('.');
  const digits = point < 0 ? rest.raw.length : point;
  if (digits !== 2 && digits !== 3) return undefined;
  const metric = digits === 3;
  return { next: start + 3, number: whole.value * (metric ? 1000 : 100) + rest.value, unit: metric ? 'm' : 'ft' };
}

/** `MP 12.5`, `milepost 12.5`, `mile marker 12`, `at mile 12`. */
function readMilepost(tokens: Tokens, i: number): Spot | undefined {
  const first = at(tokens, i);
  if (!mileWords.has(first.text) && first.raw !== 'MM') return undefined;
  let next = i + 1;
  if (first.text === 'mile') {
    if (postWords.has(at(tokens, next).text)) next++;
    else if (at(tokens, i - 1).text !== 'at') return undefined;
  }
  const sign = at(tokens, next).text;
  return barePost(tokens, sign === '.' || sign === '#' ? next + 1 : next);
}

function barePost(tokens: Tokens, i: number): Spot | undefined {
  const post = at(tokens, i);
  if (post.style !== 'whole' && post.style !== 'decimal') return undefined;
  return { next: i + 1, number: post.value, unit: 'mi' };
}
