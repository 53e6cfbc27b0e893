import { quantity } from '../shapes.ts';
import { navyAdvanced } from '../sources-craft.ts';

export default quantity({
  id: 'premix-order',
  title: 'mix to order',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because:
    'A load short stops the blade with a patch half laid; what is dumped past the ends and what is lost on the way is bought with the rest.',
  sources: [navyAdvanced('p. 8-31')],
  cues: [
    'order how-many',
    'order mix|ton|load',
    'how-many+order',
    'order #figure -operation -step -stock -cost',
    'what order -sign -cone -step -stock -cost -remove -which',
    'buy mix|ton|load',
    'how-many buy',
  ],
  alsoCalled: ['tons to order'],
  roles: { after: ['order'], before: ['order'] },
  bare: false,
  plausible: { min: { number: 0.01, unit: 'ton' }, max: { number: 25000, unit: 'ton' } },
  asks: 'How much do I order?',
  beside: ['premix-mass', 'order-loads', 'patch-area'],
  usedAt: ['order-and-check'],
  note: 'Say feathered ends apart: each counts half its length. Go up to a whole load, or what the plant sells, at the end only.',
  caution: 'Loads within legal and posted weight; a posted limit is the whole truck.',
});
