import { plus } from '../../calc/expression.ts';
import airTemperature from '../quantities/air-temperature.ts';
import coolingAir from '../quantities/cooling-air.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'cooling-air',
  title: 'air over the hot lift',
  finds: coolingAir,
  by: plus(airTemperature),
  bothWays: false,
  plan: true,
  because: 'The air that was measured.',
  sources: [geometry],
  examples: [{ given: { 'air-temperature': [70, 'degF'] }, finds: [70, 'degF'], source: 'the same air' }],
});
