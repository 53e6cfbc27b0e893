import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'end-spread',
  title: 'mix dumped past each end',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because:
    'The blade picks up and lets go of mix at the ends; without some beyond the tack the ends starve and come out low.',
  sources: [commonPractice],
  cues: [
    'how-far past|beyond',
    'far past|beyond tack|end|patch',
    'dump|mix past|beyond end|tack|patch -how-many -ton -order -@check -#length',
    'overrun',
    'past|beyond tack|end|patch how-far|what|where',
  ],
  roles: { after: ['past', 'beyond', 'overrun'], before: ['past', 'beyond'] },
  setting: ['dump', 'spread', 'tack', 'spray', 'tack'],
  bare: false,
  saidAs: [
    {
      cues: ['no+mix|premix past|beyond', 'nothing past|beyond', 'right|even|flush end|edge+tack dump|mix'],
      number: 0,
      unit: 'ft',
    },
  ],
  default: { number: 2, unit: 'ft' },
  plausible: { min: { number: 0, unit: 'ft' }, max: { number: 30, unit: 'ft' } },
  asks: 'How far past the ends do we dump?',
  usedAt: ['spread-premix'],
  note: 'What is left lying on bare road past the tack will not stick: bring it back or sweep it off before the final rolling.',
});
