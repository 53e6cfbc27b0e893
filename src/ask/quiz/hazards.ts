/** What a drawing of a work zone shows; everything else in it is as it should be. */
export interface ZoneScene {
  readonly signs: 'out' | 'missing';
  readonly flagger: 'shoulder' | 'with-the-crew' | 'in-live-lane';
  readonly buffer: 'empty' | 'occupied';
  readonly backing: 'with-spotter' | 'no-spotter';
  readonly row: 'inside' | 'over-with-traffic';
  readonly roller: 'firm' | 'drop-off';
}

const good: ZoneScene = {
  signs: 'out',
  flagger: 'shoulder',
  buffer: 'empty',
  backing: 'with-spotter',
  row: 'inside',
  roller: 'firm',
};

/** One thing that is wrong in a drawing: the rule that is broken, and the option of its choice that the drawing shows. */
export interface Hazard {
  readonly id: string;
  readonly rule: string;
  readonly option: string;
  readonly scene: ZoneScene;
  /** Hazards of the same thing: neither stands beside the other as a wrong answer. */
  readonly of: keyof ZoneScene;
}

const hazard = <K extends keyof ZoneScene>(rule: string, of: K, shown: ZoneScene[K], option: string): Hazard => ({
  id: `${of}-${shown}`,
  rule,
  option,
  scene: { ...good, [of]: shown },
  of,
});

/** Everything that can be found in a drawing. */
export const hazards: readonly Hazard[] = [
  hazard('advance-sign', 'signs', 'missing', 'missing'),
  hazard('flagger-station', 'flagger', 'with-the-crew', 'with-the-crew'),
  hazard('flagger-station', 'flagger', 'in-live-lane', 'in-live-lane'),
  hazard('buffer-empty', 'buffer', 'occupied', 'occupied'),
  hazard('backing-spotter', 'backing', 'no-spotter', 'no-spotter'),
  hazard('machine-inside-lane', 'row', 'over-with-traffic', 'over-with-traffic'),
  hazard('roller-edge', 'roller', 'drop-off', 'drop-off'),
];

export const hazardOf = (id: string | undefined): Hazard | undefined => hazards.find((each) => each.id === id);
