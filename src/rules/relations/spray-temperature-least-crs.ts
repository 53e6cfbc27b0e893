import { constant } from '../../calc/expression.ts';
import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureLeast from '../quantities/spray-temperature-least.ts';
import { relation } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default relation({
  id: 'spray-temperature-least-crs',
  title: 'coolest CRS-1 is sprayed',
  finds: sprayTemperatureLeast,
  by: constant(125, 'degF'),
  when: [{ choice: tackGrade, is: ['crs'] }],
  because: 'Thin enough for the nozzles, and no hotter than it may be.',
  sources: [ufcFlexible('table 3-2: CRS-1; CRS-2 from memory')],
  examples: [{ given: { 'tack-grade': 'crs' }, finds: [125, 'degF'], source: 'UFC 3-250-03, table 3-2' }],
});
