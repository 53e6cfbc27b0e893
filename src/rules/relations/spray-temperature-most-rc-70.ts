import { constant } from '../../calc/expression.ts';
import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureMost from '../quantities/spray-temperature-most.ts';
import { relation } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default relation({
  id: 'spray-temperature-most-rc-70',
  title: 'hottest RC-70 is sprayed',
  finds: sprayTemperatureMost,
  by: constant(200, 'degF'),
  when: [{ choice: tackGrade, is: ['rc-70'] }],
  because: 'Thin enough for the nozzles, and no hotter than it may be.',
  sources: [ufcFlexible('table 3-2: RC-70')],
  examples: [{ given: { 'tack-grade': 'rc-70' }, finds: [200, 'degF'], source: 'UFC 3-250-03, table 3-2' }],
});
