import { fromBase, roundUp } from '../calc/quantity.ts';
import type { Solution } from '../calc/solve.ts';
import type { Unit } from '../calc/units.ts';
import { type PartId, partNames, type Side } from './layout-names.ts';
import type { LayoutKind, Plan } from './layout-plan.ts';
import { plans } from './layout-plans.ts';

export type { LayoutKind } from './layout-plan.ts';

/** One sign, taper, space or line of devices, where it begins as traffic of the closed lane comes to it. */
export interface ZonePlace {
  readonly part: PartId;
  /** What it is, in words. */
  readonly what: string;
  /** Distance from the near end of the work when `side` is approach, from its far end when it is past. */
  readonly at: number;
  readonly unit: Unit;
  readonly side: Side;
  /** How far it reaches, for a taper, a buffer, the work. */
  readonly length?: number;
  /** The widest its devices may stand apart. */
  readonly spacing?: number;
  /** The quantities that gave its length and its spacing. */
  readonly lengthOf?: string;
  readonly spacingOf?: string;
}

/** How many of a thing the truck has to carry. */
export interface DeviceNeed {
  readonly part: PartId;
  readonly what: string;
  readonly count: number;
}

export interface ZoneLayout {
  readonly kind: LayoutKind;
  /** In the order in which traffic of the closed lane comes to them. */
  readonly places: readonly ZonePlace[];
  /** From the outermost place to the outermost place. */
  readonly total: number;
  readonly unit: Unit;
  readonly devices: readonly DeviceNeed[];
  /** Quantities that are not known yet; there is no layout while there is one. */
  readonly needs: readonly string[];
}

export interface LayoutOptions {
  readonly unit?: Unit;
  /** The quantity that gives the length of the work: the patch, or the work space with room to turn. */
  readonly work?: string;
}

interface Found {
  readonly part: PartId;
  readonly near: number;
  readonly far: number;
  readonly side: Side;
  /** Of a stretch: the quantities that say how long it is and how far apart its devices stand. */
  readonly lengthOf?: string;
  readonly spacingOf?: string;
}

/**
 * The layout that goes with a quantity: of one that belongs to a single layout that one, of one that every layout has the
 * layout that is settled. Undefined where there is none.
 */
export function layoutFor(quantity: string, settled: LayoutKind | undefined): LayoutKind | undefined {
  const own = Object.values(plans).find(({ length, shows }) => length === quantity || shows.includes(quantity));
  return own?.kind ?? (anyLayout.includes(quantity) ? settled : undefined);
}

/** Quantities that every layout has. */
const anyLayout = ['zone-devices'];

/** The plan a layout is made by. */
export const planOf = (kind: LayoutKind): Plan => plans[kind];

/** Quantities a layout is made from. */
export function needsOfLayout(kind: LayoutKind, work = 'patch-length'): string[] {
  const plan = plans[kind];
  const parts = [...plan.approach, ...plan.past];
  const named = parts.flatMap((part) => (part.is === 'stretch' ? [part.length, part.spacing] : [part.after]));
  return [...new Set([work, ...named, plan.spacing].filter((id) => id !== undefined))];
}

/**
 * Lays a work zone out from solved facts: every sign, taper, space and flagger with its distance from the work, in the
 * order in which traffic of the closed lane meets them; the length of it all; and what the truck carries. Distances in
 * `unit` (feet). A quantity that is not known is named in `needs`, and then nothing is laid out.
 */
export function layoutOf(kind: LayoutKind, facts: Solution, options: LayoutOptions = {}): ZoneLayout {
  const { unit = 'ft', work = 'patch-length' } = options;
  const needs = needsOfLayout(kind, work).filter((id) => !facts.has(id));
  if (needs.length) return { kind, places: [], total: 0, unit, devices: [], needs };
  const plan = plans[kind];
  const lengthOf = (id: string): number => facts.get(id)!.value;
  const approach = setDown(plan, 'approach', lengthOf);
  const past = setDown(plan, 'past', lengthOf);
  const place = ({ part, near, far, side, lengthOf: of, spacingOf }: Found): ZonePlace => ({
    part,
    what: partNames[part],
    at: fromBase(side === 'approach' ? far : near, unit),
    unit,
    side,
    ...(of === undefined || spacingOf === undefined
      ? {}
      : {
          length: fromBase(far - near, unit),
          spacing: fromBase(lengthOf(spacingOf), unit),
          lengthOf: of,
          spacingOf,
        }),
  });
  const lengthOfWork = lengthOf(work);
  const workSpace = [
    place({ part: 'work', near: -lengthOfWork, far: 0, side: 'approach', lengthOf: work, spacingOf: plan.spacing }),
    place({ part: 'work-end', near: 0, far: 0, side: 'past' }),
  ];
  const reach = (parts: readonly Found[]): number => Math.max(0, ...parts.map(({ far }) => far));
  return {
    kind,
    places: [...approach.map(place).reverse(), ...workSpace, ...past.map(place)],
    total: fromBase(reach(approach) + lengthOfWork + reach(past), unit),
    unit,
    devices: devicesOf(plan, lengthOfWork, lengthOf),
    needs,
  };
}

/** Sets parts down one beyond the other, from the work outward. */
function setDown(plan: Plan, side: Side, lengthOf: (id: string) => number): Found[] {
  let reached = 0;
  return plan[side].map((part) => {
    const near = reached;
    if (part.is === 'post') {
      reached += part.after ? lengthOf(part.after) : 0;
      return { part: part.part, near: reached, far: reached, side };
    }
    reached += lengthOf(part.length);
    const spacingOf = part.spacing ?? plan.spacing;
    return { part: part.part, near, far: reached, side, lengthOf: part.length, spacingOf };
  });
}

/** What the truck carries. Lines of devices that meet share the one between them, so it is counted once. */
function devicesOf(
  { approach, past, spacing, with: others }: Plan,
  work: number,
  lengthOf: (id: string) => number,
): DeviceNeed[] {
  const need = (part: PartId, count: number): DeviceNeed => ({ part, what: partNames[part], count });
  const parts = [...approach, ...past];
  const stretches = parts.filter((part) => part.is === 'stretch');
  const lined = stretches
    .filter((part) => part.spacing === undefined)
    .reduce((sum, part) => sum + lengthOf(part.length), work);
  const spaces = stretches
    .flatMap((part) => (part.spacing === undefined ? [] : [roundUp(lengthOf(part.length) / lengthOf(part.spacing))]))
    .reduce((sum, each) => sum + each, roundUp(lined / lengthOf(spacing)));
  const posts = parts.filter((part) => part.is === 'post');
  const countOf = (id: PartId): number => posts.filter(({ part }) => part === id).length;
  const signs = posts.filter((part) => part.sign);
  return [
    ...[...new Set(posts.map(({ part }) => part))]
      .filter((part) => part !== 'flagger')
      .map((part) => need(part, countOf(part))),
    need('stand', signs.length),
    need('cones', spaces + 1),
    ...others.map(({ part, perPost }) => need(part, countOf(perPost))),
  ];
}
