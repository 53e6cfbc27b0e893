import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'lift-mass',
  title: 'mix a lift',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Thickness is fixed by how much lies in the row, so each lift is fed by weight.',
  sources: [commonPractice],
  cues: [
    'ton+lift',
    'how-many+ton first|second|third|last|next+lift',
    'how-many ton go|goes lift -how-many+lift',
    'ton|mix each|per+lift',
    'how-many mix lift each|per',
    'how-many each|per #mass ?lift -load -truck',
    'how-many go|goes each|per ?lift -load -truck -rut -wide -long -deep',
    'each|per #mass ?lift -how-far -load -truck -thick -deep -cost -price -hour',
  ],
  bare: false,
  plausible: { min: { number: 0.01, unit: 'ton' }, max: { number: 20000, unit: 'ton' } },
  asks: 'How many tons a lift?',
  beside: ['first-lift-mass', 'last-lift-mass', 'lift-count', 'premix-mass'],
  usedAt: ['spread-premix', 'windrow'],
});
