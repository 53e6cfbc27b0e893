import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'emulsion-volume',
  title: 'original emulsion',
  dimension: 'volume',
  units: { us: 'gal', metric: 'L' },
  rounding: { us: 'up', metric: 'up' },
  because: 'Of a diluted tank only the original emulsion has to be bought.',
  sources: [geometry],
  cues: ['how-many original|undiluted|straight ?tack'],
  roles: { after: ['tack', 'original', 'undiluted', 'straight'], before: ['original', 'undiluted'] },
  setting: ['water', 'original', 'undiluted', 'straight'],
  bare: false,
  beside: ['water-volume', 'tack-volume'],
  usedAt: ['order-and-check'],
  enough: 'the-same',
});
