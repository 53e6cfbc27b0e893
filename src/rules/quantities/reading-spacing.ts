import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'reading-spacing',
  title: 'step between readings',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  because:
    'A low shorter than the step is missed, or counts for the whole of it: the closer the readings, the nearer the tons.',
  sources: [commonPractice],
  bare: { us: 'ft', metric: 'm' },
  question: {
    text: 'How far apart are they?',
    ease: 1,
    choices: [
      { number: 10, unit: 'ft' },
      { number: 25, unit: 'ft' },
      { number: 50, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 0.25, unit: 'ft' }, max: { number: 1000, unit: 'ft' } },
});
