import { constant } from '../../calc/expression.ts';
import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureLeast from '../quantities/spray-temperature-least.ts';
import { relation } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default relation({
  id: 'spray-temperature-least-rc-70',
  title: 'coolest RC-70 is sprayed',
  finds: sprayTemperatureLeast,
  by: constant(120, 'degF'),
  when: [{ choice: tackGrade, is: ['rc-70'] }],
  because: 'Thin enough for the nozzles, and no hotter than it may be.',
  sources: [ufcFlexible('table 3-2: RC-70')],
  examples: [{ given: { 'tack-grade': 'rc-70' }, finds: [120, 'degF'], source: 'UFC 3-250-03, table 3-2' }],
});
