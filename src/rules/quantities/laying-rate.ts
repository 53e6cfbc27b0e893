import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'laying-rate',
  title: 'mix laid in an hour',
  dimension: 'output',
  units: { us: 'ton/h', metric: 't/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'The pace of the slowest: blade, roller or trucks.',
  sources: [commonPractice],
  cues: [
    'lay+rate',
    'pace|rate|production ton hour -truck -haul -roll',
    'pace #mass -roll',
    'how-many+ton hour lay|place|put|down|did|do|run -truck -haul -roll -need',
  ],
  roles: { after: ['lay', 'hour'], before: ['lay', 'place', 'at'] },
  bare: false,
  question: {
    text: 'How many tons an hour do you lay?',
    ease: 4,
    choices: [
      { number: 40, unit: 'ton/h' },
      { number: 60, unit: 'ton/h' },
      { number: 80, unit: 'ton/h' },
    ],
  },
  plausible: { min: { number: 1, unit: 'ton/h' }, max: { number: 600, unit: 'ton/h' } },
  beside: ['lay-time', 'trucks-needed'],
});
