import { commonPractice, quantity } from '../shapes.ts';
import { fromMemory } from '../sources-craft.ts';

export default quantity({
  id: 'grader-efficiency',
  title: 'share of the time the grader works',
  dimension: 'ratio',
  units: { us: '%', metric: '%' },
  rounding: { us: 'whole', metric: 'whole' },
  because:
    'Turning, waiting and looking take the rest. On long runs 60 % is taken; on short ones count the turns instead.',
  sources: [commonPractice, fromMemory('FM 5-434, now TM 3-34.62: 0.60 in its road-maintenance example')],
  roles: { after: ['efficiency', 'efficient', 'grader'], before: ['efficiency', 'at', 'grader'] },
  bare: false,
  default: { number: 60, unit: '%' },
  plausible: { min: { number: 10, unit: '%' }, max: { number: 100, unit: '%' } },
  beside: ['grading-time'],
});
