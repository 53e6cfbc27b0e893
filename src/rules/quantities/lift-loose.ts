import { quantity } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default quantity({
  id: 'lift-loose',
  title: 'loose depth before rolling',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because:
    'The roller presses the air out and the lift goes down by a steady share; what is left too thin comes out low.',
  sources: [napa('7.5')],
  cues: [
    'what leave|lay|put|start|set loose #length|#number',
    'loose -stone -piece -base',
    'rolled set|lay|put depth|blade|it what|how|where -ton -roller',
    'how+thick|deep loose lay|put|place|drop|spread -laid -stone',
    'loose lift|leave|depth|thick|lay -stone',
    'how-many|how loose',
    'before roll leave|lay|thick',
    'fluff',
    'loose #length ?roll-down',
    'how-many leave roll|rolled',
  ],
  roles: { after: ['loose', 'uncompacted'], before: ['loose'] },
  bare: { us: 'in', metric: 'mm' },
  plausible: { min: { number: 0.1, unit: 'in' }, max: { number: 18, unit: 'in' } },
  asks: 'How much loose do I leave?',
  setting: ['loose', 'uncompacted', 'fluff', 'leave'],
  beside: ['lift-thickness', 'lift-count'],
  usedAt: ['first-lift', 'next-lift', 'finish-lift'],
  enough: 'the-same',
});
