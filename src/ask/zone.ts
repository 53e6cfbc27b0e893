import { type LayoutKind, layoutFor, layoutOf, planOf } from '../rules/layout.ts';
import { partNames } from '../rules/layout-names.ts';
import type { Load, Place } from './reply.ts';
import { tidy } from './say.ts';
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
    layout: places.map(({ part, what, at, unit: of, side, length, spacing }) => ({
      what,
      at: tidy(at),
      unit: of,
      side,
      part,
      ...(length === undefined || spacing === undefined ? {} : { length: tidy(length), spacing: tidy(spacing) }),
    })),
    load,
    lines: [
      en.zone.load(load.map((each) => en.zone.need(each.count, each.what, each.withRoom))),
      en.zone.mayAdd(planOf(kind).mayAdd.map((part) => partNames[part])),
    ],
  };
}

/** The length of the layout that was named, where what is asked belongs to another layout: "it's a shoulder closure". */
export function asLaidOut({ voice, understood }: Scene, quantity: string): string {
  const said = understood.facts.some((fact) => fact.quantity === 'layout-kind') ? settledIn(voice) : undefined;
  const own = layoutFor(quantity, undefined);
  return said && own && said !== own ? planOf(said).length : quantity;
}
