import { constant } from '../../calc/expression.ts';
import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureMost from '../quantities/spray-temperature-most.ts';
import { relation } from '../shapes.ts';
import { fromMemory } from '../sources-craft.ts';

export default relation({
  id: 'spray-temperature-most-mc-70',
  title: 'hottest MC-70 is sprayed',
  finds: sprayTemperatureMost,
  by: constant(225, 'degF'),
  when: [{ choice: tackGrade, is: ['mc-70'] }],
  because: 'Thin enough for the nozzles, and no hotter than it may be.',
  sources: [fromMemory('spraying range of MC-70')],
  examples: [{ given: { 'tack-grade': 'mc-70' }, finds: [225, 'degF'], source: 'recalled, to be confirmed' }],
});
