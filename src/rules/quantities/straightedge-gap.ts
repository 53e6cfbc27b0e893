import { quantity } from '../shapes.ts';

export default quantity({
  id: 'straightedge-gap',
  title: 'gap under a 10 ft straightedge',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'What shows under the edge is felt on the road and holds water.',
  sources: [
    {
      document: 'state specification amendment on surface smoothness',
      issuer: 'issuer not shown',
      place: '10 ft straightedge',
      seen: 'read',
    },
  ],
  roles: { after: ['gap', 'straightedge', 'under', 'daylight'], before: ['gap', 'under', 'straightedge', 'daylight'] },
  setting: ['straightedge', 'gap', 'daylight', 'board'],
  bare: { us: 'in', metric: 'mm' },
  question: {
    text: 'How big is the gap under the straightedge?',
    ease: 1,
    choices: [
      { number: 0.125, unit: 'in' },
      { number: 0.25, unit: 'in' },
      { number: 0.375, unit: 'in' },
    ],
  },
  plausible: { min: { number: 0.01, unit: 'in' }, max: { number: 6, unit: 'in' } },
  usedAt: ['final-roll'],
});
