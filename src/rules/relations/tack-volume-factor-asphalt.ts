import { constant, minus, over, plus, power, times } from '../../calc/expression.ts';
import tackKind from '../choices/tack-kind.ts';
import tackTemperature from '../quantities/tack-temperature.ts';
import tackVolumeFactor from '../quantities/tack-volume-factor.ts';
import { relation } from '../shapes.ts';
import { astmVolume, iowaVolume } from '../sources-craft.ts';

export default relation({
  id: 'tack-volume-factor-asphalt',
  title: 'volume factor of asphalt, column A',
  finds: tackVolumeFactor,
  by: plus(
    minus(1.0211, over(times(3.549e-4, tackTemperature), constant(1, 'degF'))),
    over(times(4.4988e-8, power(tackTemperature, 2)), power(constant(1, 'degF'), 2)),
  ),
  bothWays: false,
  when: [{ choice: tackKind, is: ['asphalt'] }],
  because: 'Asphalt of a specific gravity of 0.967 and over swells by about a third of a thousandth for each degree.',
  sources: [iowaVolume('column A'), astmVolume('table 1, column A')],
  examples: [
    {
      given: { 'tack-temperature': [100, 'degF'], 'tack-kind': 'asphalt' },
      finds: [0.9861, '1'],
      within: 1e-4,
      source: 'Iowa DOT T102C prints 0.9861 at 100 degF',
    },
    {
      given: { 'tack-temperature': [200, 'degF'], 'tack-kind': 'asphalt' },
      finds: [0.952, '1'],
      within: 1.5e-4,
      source: 'Iowa DOT T102C prints 0.9520 at 200 degF',
    },
  ],
});
