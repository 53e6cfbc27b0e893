import { constant, minus, over, plus, power, times } from '../../calc/expression.ts';
import tackKind from '../choices/tack-kind.ts';
import tackTemperature from '../quantities/tack-temperature.ts';
import tackVolumeFactor from '../quantities/tack-volume-factor.ts';
import { relation } from '../shapes.ts';
import { astmVolume } from '../sources-craft.ts';

export default relation({
  id: 'tack-volume-factor-cutback',
  title: 'volume factor of cutback, column B',
  finds: tackVolumeFactor,
  by: plus(
    minus(1.02414, over(times(4.0642e-4, tackTemperature), constant(1, 'degF'))),
    over(times(6.79e-8, power(tackTemperature, 2)), power(constant(1, 'degF'), 2)),
  ),
  bothWays: false,
  when: [{ choice: tackKind, is: ['cutback'] }],
  because: 'Lighter liquids of 0.850 to 0.965 swell a little more.',
  sources: [
    { document: 'worked out from ASTM D4311/D4311M, table 1, column B, printed for degC', seen: 'derived' },
    astmVolume('table 1, column B'),
  ],
  examples: [
    {
      given: { 'tack-temperature': [100, 'degC'], 'tack-kind': 'cutback' },
      finds: [0.9410317, '1'],
      within: 1e-5,
      source:
        'ASTM D4311 column B as printed for degC, 1.0108 − 7.2344e-4 C + 2.199e-7 C², at 100 degC over that at 60 degF',
    },
  ],
});
