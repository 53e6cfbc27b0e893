import { cosine, times } from '../../calc/expression.ts';
import bladeAngle from '../quantities/blade-angle.ts';
import bladeLength from '../quantities/blade-length.ts';
import bladeReach from '../quantities/blade-reach.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'blade-reach',
  title: 'effective width of the blade',
  finds: bladeReach,
  by: times(bladeLength, cosine(bladeAngle)),
  keeps: [bladeAngle],
  because: 'Turned off square, the blade shows the road its length times the cosine of the angle.',
  sources: [geometry],
  examples: [
    {
      given: { 'blade-length': [12, 'ft'], 'blade-angle': [30, 'deg'] },
      finds: [6 * Math.sqrt(3), 'ft'],
      source: 'geometry: cos 30° is √3 ÷ 2',
    },
    {
      given: { 'blade-length': [14, 'ft'], 'blade-angle': [45, 'deg'] },
      finds: [7 * Math.SQRT2, 'ft'],
      source: 'geometry: cos 45° is √2 ÷ 2',
    },
  ],
});
