import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'tons-left',
  title: 'mix still needed',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'The need less what is down, load by load: a shortage seen two loads before the end can still be ordered.',
  sources: [commonPractice],
  cues: [
    'how-many+more #mass',
    'how-many+more come|haul|need -load -truck',
    'how-many more ton|mix',
    'how-many+ton more|left|still',
    'how-many ton|mix left|still',
    'run|come short',
    'still need ton|mix',
    'ton still',
    'what|how-many left|remaining haul|place|go|goes|lay|need|order',
    'what left #mass -truck -over',
    'ton|mix left|remaining -truck',
    'need #mass down|place|laid',
  ],
  bare: false,
  asks: 'How many more tons do we need?',
  beside: ['loads-left', 'premix-mass', 'placed-mass'],
});
