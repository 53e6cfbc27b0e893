import { quantity } from '../shapes.ts';

export default quantity({
  id: 'stick-after',
  title: 'tank stick after the shot',
  dimension: 'volume',
  units: { us: 'gal', metric: 'L' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Two stick readings tell what was really sprayed. Level ground, and the chart of that tank.',
  sources: [
    { document: 'tack coat best-practice guide of a state materials office', place: 'tank sticks', seen: 'read' },
  ],
  cues: [
    'what|how-many+stick after',
    'how-many tack|gallon|tank left|remain tank|distributor|stick',
    'tack|gallon left|remain tank|distributor -roller',
  ],
  roles: {
    after: ['after', 'left', 'end'],
    before: ['end', 'after', 'then', 'to', 'now', 'down', 'finish', 'finished'],
  },
  setting: ['stick', 'start', 'end', 'strapped', 'dip', 'gauge', 'tank', 'distributor', 'went'],
  bare: { us: 'gal', metric: 'L' },
  beside: ['tack-used'],
  usedAt: ['tack', 'record'],
});
