import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'rolling-rate',
  title: 'tons the roller keeps up with in an hour',
  dimension: 'output',
  units: { us: 'ton/h', metric: 't/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'The area rolled in an hour, at the thickness and weight of the lift.',
  sources: [geometry],
  cues: ['ton hour roll|roller|rolled', 'roller rate|keep|production', 'how-many+ton roller|roll|rolled'],
  bare: false,
  asks: 'How many tons an hour can the roller take?',
  beside: ['rollers-needed', 'rolling-area-rate'],
  usedAt: ['roll-lift'],
  enough: 'no-larger',
});
