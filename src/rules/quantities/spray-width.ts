import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'spray-width',
  title: 'width of the spray bar in use',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Tack is sprayed as wide as the bar has nozzles open.',
  sources: [commonPractice],
  cues: ['how+wide bar|spray|shoot|shot', 'bar+width'],
  roles: { after: ['bar', 'spray', 'shoot', 'shot'], before: ['bar'] },
  bare: { us: 'ft', metric: 'm' },
  setting: ['bar', 'spray', 'shoot', 'shot', 'nozzle', 'distributor'],
  question: {
    text: 'How wide does the bar spray?',
    ease: 2,
    choices: [
      { number: 8, unit: 'ft' },
      { number: 10, unit: 'ft' },
      { number: 12, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 0.5, unit: 'ft' }, max: { number: 30, unit: 'ft' } },
  beside: ['tack-run-length', 'distributor-speed'],
  usedAt: ['tack'],
});
