import type { Facts } from '../../rules/shapes.ts';

/** What a set can be on. */
export const topics = [
  'rolling',
  'tack',
  'mix',
  'lifts',
  'blade',
  'trucks',
  'traffic',
  'weather',
  'finish',
  'safety',
  'hazards',
  'steps',
  'faults',
  'repairs',
] as const;
export type Topic = (typeof topics)[number];

/** Rules and faults by the work they belong to. One that stands in no list comes up in sets on everything. */
export const records: Readonly<Partial<Record<Topic, string>>> = {
  rolling: `roller-speed roller-overlap roller-keeps-up static-thin-lift impacts-per-foot hot-section roll-each-lift
    roll-low-to-high roller-belt roller-edge drum-bridges-rut wheel-ridges pickup pushing roller-cracks roller-marks
    joint-open low-patch`,
  tack: `tack-rate dilution-once cutback-undiluted tack-clean-dry tack-set no-rain no-water-in-cutback slippage bleeding
    tack-tracking rained-on-tack bar-streak`,
  mix: `end-spread payload placed-before-finish segregation chunks cold-load runs-short pile-at-end lift-min`,
  lifts: `lift-max lift-min static-thin-lift placed-before-finish roll-each-lift fewest-passes tearing low-patch wheel-ridges`,
  blade: `lay-speed fewest-passes turnout-distance end-spread windrow-side material-run-out machine-inside-lane washboards
    scallops ridge tearing segregation drag-marks chunks spill-under-wheels pile-at-end thin-edge end-bump center-hump
    runs-short`,
  trucks: 'payload backing-spotter end-spread roller-keeps-up cold-load tack-tracking',
  traffic: `buffer-length device-spacing taper-length sign-spacing sign-height cone-height open-lane queue-room speed-drop
    full-closure flagger-sight pilot-car hold-time advance-sign apparel arrow-board-mode buffer-empty flagger-count
    flagger-station machine-inside-lane night-lighting poor-visibility queue-end signs-true traffic-control-first
    traffic-control-last`,
  weather:
    'air-temperature surface-temperature temperature-trend no-rain poor-visibility raveling rained-on-tack cold-load',
  finish: `flush-finish straightedge drop-off drop-off-after open-to-traffic overnight overnight-ramp open-cool waste-disposal
    thin-edge end-bump ponding joint-open low-patch center-hump roller-marks`,
};

/** Rules by which people are hurt or not: an item on one of them must be right. */
export const mustPass: ReadonlySet<string> = new Set([
  'backing-spotter',
  'buffer-empty',
  'roller-edge',
  'roller-belt',
  'no-water-in-cutback',
  'traffic-control-first',
  'traffic-control-last',
  'flagger-station',
  'machine-inside-lane',
  'advance-sign',
  'apparel',
]);

/** Who sits where: what each is asked about, and the rules that always come up for him. */
export const seats: Readonly<Record<string, { readonly on: readonly Topic[]; readonly musts: readonly string[] }>> = {
  'new-hand': {
    on: ['safety', 'steps', 'faults', 'tack'],
    musts: ['traffic-control-first', 'backing-spotter', 'buffer-empty', 'apparel'],
  },
  flagger: { on: ['traffic', 'safety'], musts: ['flagger-station', 'advance-sign', 'buffer-empty', 'apparel'] },
  raker: { on: ['finish', 'mix', 'faults'], musts: ['backing-spotter', 'traffic-control-first'] },
  roller: { on: ['rolling', 'lifts'], musts: ['roller-edge', 'roller-belt', 'machine-inside-lane'] },
  tack: { on: ['tack', 'weather'], musts: ['no-water-in-cutback', 'traffic-control-first'] },
  truck: { on: ['trucks', 'mix'], musts: ['backing-spotter', 'buffer-empty'] },
  blade: { on: ['blade', 'lifts'], musts: ['machine-inside-lane', 'buffer-empty', 'backing-spotter'] },
  foreman: {
    on: ['steps', 'traffic', 'mix', 'lifts', 'weather', 'finish', 'repairs', 'faults'],
    musts: ['traffic-control-first', 'traffic-control-last', 'flagger-station', 'buffer-empty'],
  },
};

/** Options that are a matter of judgement: neither right nor wrong enough for a key. */
export const judgement: ReadonlySet<string> = new Set([
  'tack-clean-dry/damp',
  'waste-disposal/roadside',
  'flagger-count/one',
  'flagger-count/one-sees-both',
  'machine-inside-lane/over-traffic-held',
  'arrow-board-mode/at-merging-taper',
  'no-rain/rain-due',
  'night-lighting/day',
  'temperature-trend/steady',
  'apparel/class-2-night-flagger',
]);

/** Limits that no yes-or-no item is made of: fewer passes than needed hold to the rule and leave the width bare; two are one state's figures. */
export const notTried: ReadonlySet<string> = new Set(['fewest-passes', 'hold-time', 'pilot-car']);

/** Faults whose causes could be given for one another: none is a wrong answer to the other. */
export const lookAlikes: readonly (readonly string[])[] = [
  ['soft-spot', 'pushing', 'roller-cracks', 'pickup', 'low-patch', 'failure-returns'],
  ['raveling', 'segregation', 'tearing', 'drag-marks', 'chunks', 'cold-load'],
  ['scallops', 'runs-short', 'thin-edge', 'pile-at-end', 'end-bump', 'low-patch'],
  ['wheel-ridges', 'center-hump', 'ridge', 'roller-marks', 'washboards'],
  ['slippage', 'bleeding', 'tack-tracking', 'bar-streak', 'rained-on-tack', 'raveling', 'pickup'],
  ['low-patch', 'ponding', 'joint-open', 'end-bump'],
  ['end-bump', 'roller-marks'],
  // A blade that goes too fast has a hand in each of these.
  ['washboards', 'tearing', 'scallops', 'drag-marks', 'segregation', 'ridge', 'spill-under-wheels'],
];

/** Facts a rule needs said beside those of its example. */
export const sayAlso: Readonly<Record<string, Facts>> = { 'roller-overlap': { 'drum-width': [4.5, 'ft'] } };

/** Limits whose figure itself may be asked for: nobody is hurt who remembers a wrong one. */
export const figureAsked: ReadonlySet<string> = new Set(['roller-speed', 'lay-speed', 'flush-finish']);

const listed = new Map(
  (Object.entries(records) as [Topic, string][]).map(([topic, ids]) => [topic, new Set(ids.split(/\s+/))]),
);

/** Topics that a rule or a fault belongs to. */
export function topicsOf(id: string): Topic[] {
  const found = [...listed].flatMap(([topic, ids]) => (ids.has(id) ? [topic] : []));
  return mustPass.has(id) ? [...found, 'safety'] : found;
}
