import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'haul-distance',
  title: 'haul, one way',
  dimension: 'length',
  units: { us: 'mi', metric: 'km' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Plant or pile to the patch; the truck drives it twice.',
  sources: [commonPractice],
  cues: ['how-far haul|plant|pit'],
  roles: { after: ['haul', 'away', 'plant', 'pile', 'pit', 'out'], before: ['haul', 'plant'] },
  setting: ['haul', 'plant', 'pit', 'cycle', 'trip', 'truck'],
  bare: false,
  question: {
    text: 'How far is the haul, one way?',
    ease: 2,
    choices: [
      { number: 5, unit: 'mi' },
      { number: 12, unit: 'mi' },
      { number: 25, unit: 'mi' },
    ],
  },
  plausible: { min: { number: 0.05, unit: 'mi' }, max: { number: 150, unit: 'mi' } },
  beside: ['cycle-time'],
  usedAt: ['order-and-check'],
});
