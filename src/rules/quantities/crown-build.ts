import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'crown-build',
  title: 'build-up at the high end of the wedge',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'Bringing the slope back lays a wedge: nothing at one side, the whole difference at the other.',
  sources: [geometry],
  cues: ['restore|build|rebuild crown|slope', 'build+up crown|slope|edge', 'crown build|wedge'],
  bare: false,
  asks: 'How much do I build up the crown?',
  beside: ['crown-wedge-depth', 'crown-wedge-mass'],
  usedAt: ['survey-and-mark'],
});
