import { constant, minus, over, times } from '../../calc/expression.ts';
import tackKind from '../choices/tack-kind.ts';
import tackTemperature from '../quantities/tack-temperature.ts';
import tackVolumeFactor from '../quantities/tack-volume-factor.ts';
import { relation } from '../shapes.ts';
import { fromMemory } from '../sources-craft.ts';

export default relation({
  id: 'tack-volume-factor-emulsion',
  title: 'volume factor of an emulsion',
  finds: tackVolumeFactor,
  by: minus(1, over(times(0.00025, minus(tackTemperature, constant(60, 'degF'))), constant(1, 'degF'))),
  when: [{ choice: tackKind, is: ['emulsion'] }],
  because: 'An emulsion swells by a quarter of a thousandth for each degree.',
  sources: [fromMemory('Asphalt Institute and AEMA volume table for emulsions')],
  note: 'From memory: for planning, not for payment.',
  examples: [
    {
      given: { 'tack-temperature': [140, 'degF'], 'tack-kind': 'emulsion' },
      finds: [0.98, '1'],
      source: 'worked out by hand: 1 − 0.00025 × 80',
    },
  ],
});
