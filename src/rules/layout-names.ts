/** What each part of a layout is called; another language brings a list of the same shape. */
export const partNames = {
  'road-work-ahead': 'ROAD WORK AHEAD sign (W20-1)',
  'one-lane-road-ahead': 'ONE LANE ROAD AHEAD sign (W20-4)',
  'flagger-ahead': 'flagger symbol sign (W20-7)',
  'lane-closed-ahead': 'LANE CLOSED AHEAD sign (W20-5)',
  'lane-ends': 'lane ends symbol sign (W4-2)',
  'shoulder-closed-ahead': 'SHOULDER CLOSED AHEAD sign (W21-5b)',
  'prepared-to-stop': 'BE PREPARED TO STOP sign (W3-4)',
  'end-road-work': 'END ROAD WORK sign (G20-2)',
  flagger: 'flagger',
  'arrow-board': 'arrow board',
  'flagger-taper': 'one-lane two-way taper begins',
  'merging-taper': 'merging taper begins',
  'shoulder-taper': 'shoulder taper begins',
  'downstream-taper': 'downstream taper begins',
  buffer: 'buffer space begins: nothing in it',
  work: 'work space begins',
  'work-end': 'work space ends',
  cones: 'cone or other device',
  stand: 'sign stand',
  paddle: 'STOP/SLOW paddle',
} as const;

export type PartId = keyof typeof partNames;

/** Where a place lies, as seen by the traffic of the closed lane. */
export const sideNames = {
  approach: 'before the work',
  past: 'past the work',
} as const;

export type Side = keyof typeof sideNames;
