import type { PartId } from '../../rules/layout-names.ts';

/** What stands in the drawings. Another language is another file of this shape. */
export const drawn = {
  zone: {
    titles: {
      flaggers: 'Work zone: one lane closed on a two-lane road, with flaggers',
      'lane-closed': 'Work zone: one lane closed on a multilane road',
      shoulder: 'Work zone: shoulder closed',
    },
    desc: (parts: readonly string[]) =>
      `Plan of the road, traffic of the closed side going up. From the bottom up: ${parts.join('; ')}.`,
    /** Names in lines short enough to stand beside the road. */
    names: {
      'road-work-ahead': ['ROAD WORK', 'AHEAD', 'W20-1'],
      'one-lane-road-ahead': ['ONE LANE', 'ROAD AHEAD', 'W20-4'],
      'flagger-ahead': ['flagger symbol', 'W20-7'],
      'lane-closed-ahead': ['LANE CLOSED', 'AHEAD', 'W20-5'],
      'lane-ends': ['lane ends', 'symbol W4-2'],
      'shoulder-closed-ahead': ['SHOULDER', 'CLOSED AHEAD', 'W21-5b'],
      flagger: ['flagger'],
      'arrow-board': ['arrow board'],
      'flagger-taper': ['one-lane', 'two-way taper'],
      'merging-taper': ['merging taper'],
      'shoulder-taper': ['shoulder taper'],
      'downstream-taper': ['downstream taper'],
      buffer: ['buffer space:', 'nothing in it'],
      work: ['work space'],
    } satisfies Partial<Record<PartId, readonly string[]>> as Partial<Record<string, readonly string[]>>,
    before: (distance: string) => `${distance} to work`,
    past: (distance: string) => `${distance} past work`,
    cones: (spacing: string) => `cones every ${spacing}`,
    whole: (distance: string) => `In all ${distance}`,
    scale: 'Not to scale',
    list: 'Every part with its distance',
    item: (what: string, where: readonly string[]) => `${what}: ${where.join(', ')}`,
    long: (length: string) => `${length} long`,
    beforeWork: (distance: string) => `${distance} before the work`,
    pastWork: (distance: string) => `${distance} past the work`,
    atWork: 'at the work',
    load: 'Load on the truck',
    need: (count: number, what: string, withRoom?: number) =>
      withRoom === undefined ? `${count} × ${what}` : `${count} × ${what} (${withRoom} with room to turn)`,
  },
} as const;
