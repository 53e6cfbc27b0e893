import { times } from '../../calc/expression.ts';
import patchArea from '../quantities/patch-area.ts';
import premixMass from '../quantities/premix-mass.ts';
import spreadRate from '../quantities/spread-rate.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'premix-mass-spread',
  title: 'tons from the spread rate',
  finds: premixMass,
  by: times(patchArea, spreadRate),
  because: 'So many pounds on each square yard.',
  sources: [virginia('ch. 9, p. 9-1')],
  examples: [
    {
      given: { 'patch-area': [782, 'yd2'], 'spread-rate': [170, 'lb/yd2'] },
      finds: [132940, 'lb'],
      source: 'Virginia DOT study guide, ch. 9, p. 9-2, read backward: 270.69 ft × 26 ft is 782 yd²',
    },
  ],
});
