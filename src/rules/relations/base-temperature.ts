import { plus } from '../../calc/expression.ts';
import baseTemperature from '../quantities/base-temperature.ts';
import surfaceTemperature from '../quantities/surface-temperature.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'base-temperature',
  title: 'the road under a hot lift',
  finds: baseTemperature,
  by: plus(surfaceTemperature),
  bothWays: false,
  second: true,
  plan: true,
  because: 'The first lift lies on the road as it is.',
  sources: [commonPractice],
  examples: [{ given: { 'surface-temperature': [60, 'degF'] }, finds: [60, 'degF'], source: 'the same surface' }],
});
