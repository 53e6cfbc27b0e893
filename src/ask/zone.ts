import { toBase } from '../calc/quantity.ts';
import { sayFigure } from '../calc/wording.ts';
import { type LayoutKind, layoutFor, layoutOf, planOf, type ZonePlace } from '../rules/layout.ts';
import { partNames } from '../rules/layout-names.ts';
import type { Load, Place } from './reply.ts';
import { say, tidy } from './say.ts';
import type { Scene } from './scene.ts';
import type { Voice } from './voice.ts';
import { en } from './wording/en.ts';

/** The work zone that goes with an answer: its places in order, what the truck carries, and the lines that say so. */
export interface Zone {
  readonly layout: readonly Place[];
  readonly load: readonly Load[];
  readonly lines: readonly string[];
}

const patch = 'patch-length';
const withRoom = 'work-length';

/** The layout that the facts settle. */
const settledIn = ({ solved }: Voice): LayoutKind | undefined =>
  (['flaggers', 'lane-closed', 'shoulder'] as const).find((kind) => solved.has(`layout-kind=${kind}`));

/** The zone laid out, where the quantity is one of a layout and all that the layout needs is known. */
export function zoneOf(quantity: string, voice: Voice): Zone | undefined {
  const kind = layoutFor(quantity, settledIn(voice));
  if (!kind) return undefined;
  const unit = voice.unit(planOf(kind).length);
  const work = quantity === 'zone-length-turning' ? withRoom : patch;
  const { places, devices, needs } = layoutOf(kind, voice.solved, { unit, work });
  if (needs.length) return undefined;
  const roomy = work === withRoom ? [] : layoutOf(kind, voice.solved, { unit, work: withRoom }).devices;
  const load = devices.map(({ part, what, count }): Load => {
    const more = roomy.find((each) => each.part === part)?.count ?? count;
    return { part, what, count, ...(more > count ? { withRoom: more } : {}) };
  });
  return {
    layout: places.map((place) => placeIn(place, voice)),
    load,
    lines: [
      en.zone.load(load.map((each) => en.zone.need(each.count, each.what, each.withRoom))),
      en.zone.mayAdd(planOf(kind).mayAdd.map((part) => partNames[part])),
    ],
  };
}

/** A place with its figures in words, each rounded as its own record says. */
function placeIn(place: ZonePlace, { knowledge, isGiven }: Voice): Place {
  const { part, what, at, unit, side, length, spacing, lengthOf, spacingOf } = place;
  const words = (id: string | undefined, number: number): string => {
    const record = id && knowledge.quantities.get(id);
    return record ? say(record, toBase(number, unit), unit, isGiven(record.id)) : '';
  };
  return {
    what,
    at: tidy(at),
    unit,
    side,
    part,
    atText: sayFigure(toBase(at, unit), unit, { rounding: 'up' }),
    ...(length === undefined || spacing === undefined
      ? {}
      : {
          length: tidy(length),
          spacing: tidy(spacing),
          lengthText: words(lengthOf, length),
          spacingText: words(spacingOf, spacing),
        }),
  };
}

/** The length of the layout that was named, where what is asked belongs to another layout: "it's a shoulder closure". */
export function asLaidOut({ voice, understood }: Scene, quantity: string): string {
  const said = understood.facts.some((fact) => fact.quantity === 'layout-kind') ? settledIn(voice) : undefined;
  const own = layoutFor(quantity, undefined);
  return said && own && said !== own ? planOf(said).length : quantity;
}
