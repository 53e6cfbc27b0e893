import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'lay-time',
  title: 'time from one load to the next',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'A load lasts as long as it takes to lay it: the next one is wanted then.',
  sources: [geometry],
  cues: [
    'how+often truck|load',
    'time between truck|load',
    'truck every minute',
    'minute between|apart truck|load',
    'truck interval|spacing',
    'minute|how+long|time|how-far load|truck #output',
    'load|truck keep|last busy|us #output',
    'how-many minute load|truck',
    'minute load|truck #output',
  ],
  alsoCalled: ['truck spacing', 'truck interval'],
  roles: { after: ['between'], before: ['last', 'every'] },
  bare: false,
  bareTold: { us: 'min', metric: 'min' },
  setting: ['last'],
  asks: 'How often does a truck have to come?',
  beside: ['trucks-needed', 'laying-rate'],
});
