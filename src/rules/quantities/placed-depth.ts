import { quantity } from '../shapes.ts';
import { floridaEstimates } from '../sources-craft.ts';
import patchDepth from './patch-depth.ts';

export default quantity({
  id: 'placed-depth',
  title: 'depth put down, on average',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because:
    'Tons over area is the only thickness that cannot be fooled by where the tape was held; off by little early, it is off by a load at the end.',
  sources: [floridaEstimates('yield over about five loads, and at least once in 200 tons')],
  cues: [
    'how-many+inch #mass',
    'how-many+inch #mass make|put|get|give -truck',
    'how+thick put|down|laid|lay|place',
    'how+thick #mass',
    'what depth|thick|thickness put|down|laid|lay|place',
    'what thick|thickness|depth #mass',
    'yield',
    'average laid|put|place|down|spread|used #mass -@check -order -lift',
    'get|got+#length #mass -how-many -how-far -need -order -left -load',
    'average thick|thickness|depth -patch -rut',
    'thickness|depth #mass -@check -how-many -how-far -feet -cost -order -loose -lift -need',
    'thick how #mass',
  ],
  bare: false,
  answersFor: patchDepth,
  asks: 'How thick did we lay it?',
  beside: ['placed-rate', 'tons-left'],
});
