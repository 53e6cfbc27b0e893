import { constant } from '../../calc/expression.ts';
import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureLeast from '../quantities/spray-temperature-least.ts';
import { relation } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default relation({
  id: 'spray-temperature-least-rc-250',
  title: 'coolest RC-250 is sprayed',
  finds: sprayTemperatureLeast,
  by: constant(165, 'degF'),
  when: [{ choice: tackGrade, is: ['rc-250'] }],
  because: 'Thin enough for the nozzles, and no hotter than it may be.',
  sources: [ufcFlexible('table 3-2: RC-250')],
  examples: [{ given: { 'tack-grade': 'rc-250' }, finds: [165, 'degF'], source: 'UFC 3-250-03, table 3-2' }],
});
