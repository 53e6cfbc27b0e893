import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'lift-thickness',
  title: 'lift, rolled',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'Equal lifts share the depth evenly, so that none is thicker than it has to be.',
  sources: [commonPractice],
  cues: [
    'loose what rolled|finished -how -ton -strike -want -set -need',
    'loose what end+up|with -how -ton',
    'what loose roll|rolled out|down|to',
    'loose #length what rolled|compacted|after -leave -want -need -how-many',
    'lift+thick|thickness',
    'how+thick lift',
    'how+thick each',
    'thick each+lift',
    'lift how+thick each',
  ],
  roles: {
    after: ['lift', 'mat', 'rolled', 'compacted', 'finished'],
    before: ['lift', 'lay', 'laid', 'put', 'skim', 'blade', 'single'],
  },
  saidAs: [{ cues: ['inch+lift'], number: 1, unit: 'in' }],
  bare: { us: 'in', metric: 'mm' },
  question: {
    text: 'How thick is the lift, rolled?',
    ease: 2,
    choices: [
      { number: 0.75, unit: 'in' },
      { number: 1, unit: 'in' },
      { number: 1.5, unit: 'in' },
    ],
  },
  plausible: { min: { number: 0.1, unit: 'in' }, max: { number: 12, unit: 'in' } },
  asks: 'How thick is each lift?',
  beside: ['lift-count', 'lift-loose'],
  usedAt: ['first-lift', 'next-lift', 'finish-lift'],
});
