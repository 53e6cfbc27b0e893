import { commonPractice, quantity } from '../shapes.ts';
import tackVolume from './tack-volume.ts';

export default quantity({
  id: 'tank-volume',
  title: 'tack in the tank',
  dimension: 'volume',
  units: { us: 'gal', metric: 'L' },
  rounding: { us: 'up', metric: 'whole' },
  because: "Read off the stick on level ground, against that tank's own chart.",
  sources: [commonPractice],
  cues: ['how-many gallon tank|distributor -left -remain', 'how+big tank'],
  roles: {
    after: ['tank', 'distributor', 'aboard', 'left', 'tack', 'oil'],
    before: ['tank', 'truck', 'distributor', 'carry', 'hold', 'stick', 'strapped', 'from'],
  },
  bare: false,
  bareTold: { us: 'gal', metric: 'L' },
  question: {
    text: 'How many gallons are in the tank?',
    ease: 2,
    choices: [
      { number: 300, unit: 'gal' },
      { number: 600, unit: 'gal' },
      { number: 1000, unit: 'gal' },
    ],
  },
  plausible: { min: { number: 1, unit: 'gal' }, max: { number: 8000, unit: 'gal' } },
  beside: ['tack-run-length', 'tank-time'],
  usedAt: ['tack'],
  saidLike: tackVolume,
});
