import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'truck-spacing',
  title: 'a truck comes every',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'The trucks share out one round trip between them.',
  sources: [geometry],
  cues: [
    'how+often truck #figure',
    'truck come every',
    'truck headway',
    'truck+spacing',
    'minute between truck|load',
    'truck|load space|spacing|apart minute|min|time',
  ],
  bare: false,
  asks: 'What is the truck headway?',
  beside: ['delivery-rate', 'lay-time'],
});
