import { commonPractice, quantity } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';
import distributorSpeed from './distributor-speed.ts';

export default quantity({
  id: 'grader-speed',
  title: 'grader speed',
  dimension: 'speed',
  units: { us: 'mph', metric: 'km/h' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Slow and steady: a fast grader bounces and leaves washboards that cost more passes to take out.',
  sources: [navyBasic('p. 10-14: too much speed makes the grader bounce'), commonPractice],
  cues: ['how-fast grader|blade', 'grader speed', 'speed grader|lay|blade', 'how-fast lay'],
  roles: { after: ['grader', 'blade', 'lay', 'spread'], before: ['grader', 'blade', 'speed', 'lay', 'spread'] },
  bare: { us: 'mph', metric: 'km/h' },
  default: { number: 2.5, unit: 'mph' },
  plausible: { min: { number: 0.3, unit: 'mph' }, max: { number: 12, unit: 'mph' } },
  asks: 'How fast should the grader go?',
  beside: ['grading-time'],
  usedAt: ['first-lift', 'next-lift', 'finish-lift'],
  note: 'To read it without a gauge, time 100 ft: 2.5 mph is 27 seconds.',
  saidLike: distributorSpeed,
});
