import { constant } from '../../calc/expression.ts';
import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureLeast from '../quantities/spray-temperature-least.ts';
import { relation } from '../shapes.ts';
import { fromMemory } from '../sources-craft.ts';

export default relation({
  id: 'spray-temperature-least-mc-70',
  title: 'coolest MC-70 is sprayed',
  finds: sprayTemperatureLeast,
  by: constant(120, 'degF'),
  when: [{ choice: tackGrade, is: ['mc-70'] }],
  because: 'Thin enough for the nozzles, and no hotter than it may be.',
  sources: [fromMemory('spraying range of MC-70')],
  examples: [{ given: { 'tack-grade': 'mc-70' }, finds: [120, 'degF'], source: 'recalled, to be confirmed' }],
});
