import { constant } from '../../calc/expression.ts';
import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureLeast from '../quantities/spray-temperature-least.ts';
import { relation } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default relation({
  id: 'spray-temperature-least-ss',
  title: 'coolest SS-1, SS-1h, CSS-1, CSS-1h are sprayed',
  finds: sprayTemperatureLeast,
  by: constant(70, 'degF'),
  when: [{ choice: tackGrade, is: ['ss'] }],
  because: 'Thin enough for the nozzles, and no hotter than it may be.',
  sources: [ufcFlexible('table 3-2: SS-1, SS-1h, CSS-1, CSS-1h')],
  examples: [{ given: { 'tack-grade': 'ss' }, finds: [70, 'degF'], source: 'UFC 3-250-03, table 3-2' }],
});
