/** What cannot be asked yet in the words of the records alone, with the reason. */
const reasons: Readonly<Record<string, readonly string[]>> = {
  'a level road has no column of its own in the table of grades, and 0 % is refused there': [
    'buffer-length: buffer-length',
    'buffer-length-metric: buffer-length',
  ],
  'the name of a taper or a buffer before a figure means the one laid out': [
    'closure-length: closure-length',
    'one-lane-length: one-lane-length',
    'shifting-taper: shifting-taper',
    'shoulder-taper: shoulder-taper',
    'shoulder-zone-length: shoulder-zone-length',
    'zone-devices-flaggers: zone-devices',
    'zone-devices-lane-closed: zone-devices',
    'zone-devices-shoulder: zone-devices',
  ],
  '"the truck, empty" is judged as a load': ['legal-payload: truck-tare'],
  'the lifts are rounded up, and the lift asked of is then another': ['lift-count-by-thickness: lift-count'],
  'the example has 66 tons to the load, more than a truck is believed to carry': [
    'load-length-spread: load-length',
    'load-length-spread: patch-width',
    'load-length-spread: spread-rate',
  ],
  'the example is 110 ft wide, wider than a patch is believed to be': [
    'patch-area: patch-area',
    'patch-area: full-length',
  ],
  'one lift is put for the patch, as its thickness alone would': ['patch-depth-lifts: patch-depth'],
  '"patches 5" before their size is taken for the fifth patch of the job': [
    'premix-order-count: full-length',
    'premix-order-count: patch-width',
    'premix-order-count: patch-depth',
    'premix-order-count: unit-weight',
  ],
  'asked as a repair, not as a figure of the rut': ['rut-section: rut-depth', 'rut-section: rut-width'],
  '"ruts 2" is not yet read as a count': [
    'rut-volume: rut-volume',
    'rut-volume: rut-section',
    'rut-volume: rut-length',
  ],
  '"tack sprayed" and "tack as sprayed" are the same words, and the rate is found first': [
    'tack-rate-used: tack-used',
    'tack-used: tack-used',
    'tack-used: stick-before',
    'tack-used: stick-after',
    'tack-used-from-tank: tack-used',
    'tack-used-from-tank: stick-after',
  ],
  'a stand-in that nobody asks for by this name': [
    'taper-needed-downstream: taper-needed',
    'taper-needed-flagger: taper-needed',
    'taper-needed-merging: taper-needed',
    'taper-needed-shifting: taper-needed',
    'taper-needed-shoulder: taper-needed',
  ],
  'the length of the layout is worked out from its parts, never told': [
    'work-zone-flaggers: work-zone',
    'work-zone-lane-closed: work-zone',
    'work-zone-shoulder: work-zone',
  ],
};

/** `relation: quantity` that is not found yet. */
export const notAskedYet: ReadonlySet<string> = new Set(Object.values(reasons).flat());
