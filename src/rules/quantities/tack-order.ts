import { quantity } from '../shapes.ts';
import { armyPaving, fm5436 } from '../sources-craft.ts';

export default quantity({
  id: 'tack-order',
  title: 'tack to load, loss included',
  dimension: 'volume',
  units: { us: 'gal', metric: 'L' },
  rounding: { us: 'up', metric: 'up' },
  because:
    'Some stays in the tank, the hose and on the ground; a distributor that runs dry at the end leaves a bare strip.',
  sources: [armyPaving('p. 17: 5 % handling loss'), fm5436('ch. 6, para 6-1')],
  bare: false,
  beside: ['tack-volume', 'tank-volume'],
  usedAt: ['order-and-check'],
});
