import { quantity } from '../shapes.ts';
import { texasDesign } from '../sources-craft.ts';

export default quantity({
  id: 'cross-slope',
  title: 'cross slope',
  dimension: 'ratio',
  units: { us: '%', metric: '%' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'Water runs off at about two in a hundred; less holds it, more is felt at the wheel.',
  sources: [texasDesign('9.2.4: 2 % recommended')],
  cues: ['cross+slope', 'what slope lane|road|crown', 'percent slope', 'crown percent|slope'],
  roles: { after: ['slope', 'crown'], before: ['slope', 'crown', 'want', 'target'] },
  bare: false,
  default: { number: 2, unit: '%' },
  plausible: { min: { number: 0.1, unit: '%' }, max: { number: 12, unit: '%' } },
  asks: 'What cross slope is that?',
  beside: ['crown-drop'],
  usedAt: ['survey-and-mark', 'finish-lift'],
});
