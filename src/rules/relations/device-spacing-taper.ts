import { times } from '../../calc/expression.ts';
import taperKind from '../choices/taper-kind.ts';
import { manual } from '../manual.ts';
import deviceSpacingTaper from '../quantities/device-spacing-taper.ts';
import longTaperSpacing from '../quantities/long-taper-spacing.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'device-spacing-taper',
  title: 'spacing on a long taper',
  finds: deviceSpacingTaper,
  by: times(longTaperSpacing),
  bothWays: false,
  when: [{ choice: taperKind, is: ['merging', 'shifting', 'shoulder'] }],
  because: 'These tapers are run at speed.',
  sources: [manual('section 6K.01, paragraph 4')],
  examples: [
    {
      given: { 'long-taper-spacing': [55, 'ft'], 'taper-kind': 'merging' },
      finds: [55, 'ft'],
      source: 'MUTCD 11th ed., section 6K.01',
    },
  ],
});
