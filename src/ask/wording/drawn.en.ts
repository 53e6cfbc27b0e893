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
  section: {
    title: 'The patch in section, with its lifts in the order they are laid',
    desc: (lifts: string, thickness: string, loose: string | undefined) =>
      `${lifts} lifts of ${thickness} each, rolled, one on the other${loose ? `; each is left ${loose} loose before it is rolled` : ''}.`,
    lift: (number: number, thickness: string) => `lift ${number}: ${thickness}`,
    loose: (thickness: string) => `loose: ${thickness}`,
    old: 'old pavement',
    across: 'Not to scale across',
  },
  lanes: {
    title: 'Roller lanes, numbered in order from the low side',
    desc: (lanes: string, width: string, drum: string) =>
      `${lanes} lanes of a ${drum} drum across ${width}: lane 1 on the low side, the last on the high side.`,
    low: 'low side',
    high: 'high side',
    drum: (width: string) => `drum ${width}`,
    overlap: (width: string) => `lanes overlap ${width} or more`,
    overhang: (width: string) => `past each edge ${width}`,
  },
  dumps: {
    title: 'Where the loads are dumped',
    desc: (parts: readonly string[]) =>
      `Plan of the patch, the blade going up. From the bottom up: ${parts.join('; ')}.`,
    dump: (number: number) => `load ${number}`,
    start: 'at the start',
    from: (distance: string) => `${distance} from the start`,
    end: 'end of the patch',
  },
  profile: {
    along: 'Depths read along the road, under the level of the finished mat',
    across: 'Depths read across the road, under the level of the finished mat',
    desc: (spots: readonly (readonly [place: string, depth: string])[]) =>
      `${spots
        .slice(0, 40)
        .map(([place, depth]) => `${place}: ${depth}`)
        .join('; ')}${spots.length > 40 ? `; and ${spots.length - 40} more` : ''}.`,
    deepest: 'deepest reading',
    average: 'average across',
    level: (depth: string) => `fill up to here first: ${depth} is left`,
    scale: 'Depth drawn larger than length',
  },
  row: {
    title: 'The windrow in section',
    desc: (base: string, height: string) => `A peaked row, ${base} wide at its foot and ${height} high.`,
    row: 'row',
  },
} as const;
