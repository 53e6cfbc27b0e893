import { times } from '../../calc/expression.ts';
import endTaperLength from '../quantities/end-taper-length.ts';
import endTaperRatio from '../quantities/end-taper-ratio.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'end-taper-length-lift',
  title: 'length of the taper of one lift',
  finds: endTaperLength,
  by: times(liftThickness, endTaperRatio),
  bothWays: false,
  second: true,
  plan: true,
  because: 'So many feet for every inch.',
  sources: [geometry],
  note: 'The taper of one lift.',
  examples: [
    {
      given: { 'lift-thickness': [1, 'in'], 'end-taper-ratio': [10, 'ft/in'] },
      finds: [10, 'ft'],
      source: 'worked out by hand',
    },
  ],
});
