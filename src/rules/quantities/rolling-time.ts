import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'rolling-time',
  title: 'rolling one lift',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Every trip is the length of the patch, and part of the hour goes on reversing and water.',
  sources: [geometry],
  cues: [
    'how+long roll|roller|rolled -#temperature -behind -base -have',
    'roll+time -#temperature',
    'how-far roll|rolled #length -apart -ahead -edge -check -@check -overlap -#temperature -past -over -start -hot',
    'roll|rolled time|minute -#temperature',
    'how-many minute|hour roll|roller|rolled -#temperature',
    'how-far roll|roller need -#temperature',
    'roll|rolled #speed|minute how+long -#temperature',
    'minute|hour roll|rolled -#temperature -#output -#mass -ton',
  ],
  bare: false,
  asks: 'How long will rolling take?',
  beside: ['rolling-time-total', 'roller-passes', 'rolling-rate'],
  usedAt: ['roll-lift', 'final-roll'],
  note: 'One lift, one roller.',
});
