import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'crown-drop',
  title: 'fall across the width',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'The slope times the width is what the outer edge lies lower.',
  sources: [geometry],
  cues: [
    'crown drop|fall',
    'fall across|lane|crown',
    'how-many drop|fall slope|lane|across',
    'drop across',
    'fall #ratio',
  ],
  alsoCalled: ['fall across the lane', 'crown height'],
  roles: { after: ['fall', 'drop'], before: ['fall', 'drop', 'falls', 'drops'] },
  setting: ['crown', 'slope', 'fall', 'across'],
  bare: false,
  asks: 'How much does the lane fall across?',
  beside: ['cross-slope'],
  usedAt: ['survey-and-mark', 'finish-lift'],
});
