import { quantity } from '../shapes.ts';

export default quantity({
  id: 'stick-before',
  title: 'tank stick before the shot',
  dimension: 'volume',
  units: { us: 'gal', metric: 'L' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Two stick readings tell what was really sprayed. Level ground, and the chart of that tank.',
  sources: [
    { document: 'tack coat best-practice guide of a state materials office', place: 'tank sticks', seen: 'read' },
  ],
  roles: { after: ['before', 'start'], before: ['stick', 'start', 'begin', 'from', 'before', 'was', 'had', 'full'] },
  setting: ['stick', 'start', 'end', 'strapped', 'dip', 'gauge', 'tank', 'distributor', 'went'],
  bare: { us: 'gal', metric: 'L' },
  beside: ['tack-used'],
  usedAt: ['tack', 'record'],
});
