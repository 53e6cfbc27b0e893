import type { ZoneScene } from '../quiz/hazards.ts';

/** What is wrong, as an answer to choose. */
export const hazardNames: Readonly<Record<string, string>> = {
  'signs-missing': 'No warning signs are out',
  'flagger-with-the-crew': 'The flagger stands among the machines',
  'flagger-in-live-lane': 'The flagger stands in the open lane',
  'buffer-occupied': 'Somebody is in the buffer',
  'backing-no-spotter': 'The truck backs with no spotter',
  'row-over-with-traffic': 'The row lies over the center line',
  'roller-drop-off': 'The roller is out on the drop-off',
};

/** What a drawing shows, in words for those who do not see it: each thing where it is, and nothing of right or wrong. */
export const sceneWords: { readonly [K in keyof ZoneScene]: Readonly<Record<ZoneScene[K], string>> } = {
  signs: {
    out: 'Three warning signs stand on the shoulder ahead of the flagger.',
    missing: 'The shoulder ahead of the flagger is bare.',
  },
  flagger: {
    shoulder: 'The flagger stands alone on the shoulder, before the cones.',
    'with-the-crew': 'The flagger stands between the truck and the grader.',
    'in-live-lane': 'The flagger stands in the middle of the open lane, and a car comes.',
  },
  buffer: {
    empty: 'The stretch between the cones and the truck is bare.',
    occupied: 'A worker and a pickup are between the cones and the truck.',
  },
  backing: {
    'with-spotter': 'A truck backs toward the grader; a worker with a raised arm stands where its driver sees him.',
    'no-spotter': 'A truck backs toward the grader; no one is near it.',
  },
  row: {
    inside: 'The row of mix lies in the closed lane.',
    'over-with-traffic': 'The row of mix lies half in the lane where cars pass.',
  },
  roller: {
    firm: 'The roller works in the middle of the mat, away from the edge.',
    'drop-off': 'One end of the drum hangs past the edge of the road, where the shoulder falls away.',
  },
};

export const hazardText = {
  stem: 'The drawing shows a work zone from above. What is wrong here?',
  drawing: (words: string) => `Drawing of a work zone from above; the right lane is closed. ${words}`,
  labels: {
    signs: 'signs',
    flagger: 'flagger',
    taper: 'taper',
    buffer: 'buffer',
    truck: 'truck',
    row: 'row',
    blade: 'blade',
    roller: 'roller',
    edge: 'drop-off',
    lowSide: 'low side',
    open: 'open lane',
    scale: 'not to scale',
  },
} as const;
