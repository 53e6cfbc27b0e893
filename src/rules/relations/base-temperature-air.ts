import { plus } from '../../calc/expression.ts';
import airTemperature from '../quantities/air-temperature.ts';
import baseTemperature from '../quantities/base-temperature.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'base-temperature-air',
  title: 'road taken as warm as the air',
  finds: baseTemperature,
  by: plus(airTemperature),
  bothWays: false,
  second: true,
  plan: true,
  because: 'Where only the air was measured; in the sun the road is warmer, after a cold night it is colder.',
  sources: [commonPractice],
  note: 'The road taken as warm as the air: measure it.',
  examples: [{ given: { 'air-temperature': [60, 'degF'] }, finds: [60, 'degF'], source: 'common practice' }],
});
