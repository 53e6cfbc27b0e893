import { constant } from '../../calc/expression.ts';
import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureLeast from '../quantities/spray-temperature-least.ts';
import { relation } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default relation({
  id: 'spray-temperature-least-rs',
  title: 'coolest RS-1 is sprayed',
  finds: sprayTemperatureLeast,
  by: constant(70, 'degF'),
  when: [{ choice: tackGrade, is: ['rs-1'] }],
  because: 'Thin enough for the nozzles, and no hotter than it may be.',
  sources: [ufcFlexible('table 3-2: RS-1')],
  examples: [{ given: { 'tack-grade': 'rs-1' }, finds: [70, 'degF'], source: 'UFC 3-250-03, table 3-2' }],
});
