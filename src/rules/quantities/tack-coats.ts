import { quantity } from '../shapes.ts';
import { everett } from '../sources-craft.ts';

export default quantity({
  id: 'tack-coats',
  title: 'coats of tack',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  counted: true,
  because:
    "A coat goes on the old road; one more between lifts is the agency's call, and may be left off where the lift below is fresh, clean and warm.",
  sources: [everett('5-04.3(4): tack may be left off clean, newly paved surface if the engineer agrees')],
  cues: ['how-many+coat'],
  roles: { after: ['coat'], before: ['coat'] },
  default: { number: 1, unit: '1' },
  plausible: { min: { number: 1, unit: '1' }, max: { number: 6, unit: '1' } },
  beside: ['tack-volume'],
  usedAt: ['tack'],
});
