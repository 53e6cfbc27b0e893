import { constant } from '../../calc/expression.ts';
import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureLeast from '../quantities/spray-temperature-least.ts';
import { relation } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default relation({
  id: 'spray-temperature-least-ms',
  title: 'coolest MS-1, HFMS-1 are sprayed',
  finds: sprayTemperatureLeast,
  by: constant(70, 'degF'),
  when: [{ choice: tackGrade, is: ['ms'] }],
  because: 'Thin enough for the nozzles, and no hotter than it may be.',
  sources: [ufcFlexible('table 3-2: MS-1, HFMS-1')],
  examples: [{ given: { 'tack-grade': 'ms' }, finds: [70, 'degF'], source: 'UFC 3-250-03, table 3-2' }],
});
