import type { Place } from '../../reply.ts';

/** A place along the road: how far from the near end of the work, against traffic less than nothing. */
export interface Along {
  readonly place: Place;
  readonly from: number;
  readonly to: number;
}

/** What the drawing of a zone is made from: its places along the road, and where they begin and end, in rising order. */
export interface ZoneShape {
  readonly kind: 'flaggers' | 'lane-closed' | 'shoulder';
  readonly along: readonly Along[];
  readonly ends: readonly number[];
}

/** Reads the shape of a zone out of its places; undefined for a list that is no work zone. */
export function zoneShape(places: readonly Place[]): ZoneShape | undefined {
  const has = (part: string): boolean => places.some((place) => place.part === part);
  const work = places.find(({ part }) => part === 'work')?.length;
  if (work === undefined) return undefined;
  const kind = has('flagger') ? 'flaggers' : has('shoulder-taper') ? 'shoulder' : 'lane-closed';
  const along = places.map((place): Along => {
    const from = place.side === 'past' ? work + place.at : -place.at;
    return { place, from, to: from + (place.length ?? 0) };
  });
  const ends = [...new Set(along.flatMap(({ from, to }) => [from, to]).map((x) => Number(x.toFixed(6))))];
  return { kind, along, ends: ends.sort((a, b) => a - b) };
}
