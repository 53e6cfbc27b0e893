import { plus } from '../../calc/expression.ts';
import baseTemperature from '../quantities/base-temperature.ts';
import coolingAir from '../quantities/cooling-air.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'cooling-air-base',
  title: 'air taken as warm as the road',
  finds: coolingAir,
  by: plus(baseTemperature),
  bothWays: false,
  second: true,
  plan: true,
  because: 'Where only the road was measured; the road matters more.',
  sources: [commonPractice],
  note: 'The air taken as warm as the road.',
  examples: [{ given: { 'base-temperature': [60, 'degF'] }, finds: [60, 'degF'], source: 'common practice' }],
});
