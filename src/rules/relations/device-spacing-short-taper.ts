import { times } from '../../calc/expression.ts';
import taperKind from '../choices/taper-kind.ts';
import { manual } from '../manual.ts';
import deviceSpacingTaper from '../quantities/device-spacing-taper.ts';
import shortTaperSpacing from '../quantities/short-taper-spacing.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'device-spacing-short-taper',
  title: 'spacing on a short taper',
  finds: deviceSpacingTaper,
  by: times(shortTaperSpacing),
  bothWays: false,
  when: [{ choice: taperKind, is: ['flagger', 'downstream'] }],
  because: 'The same at any speed: the taper is short and traffic has stopped, or is leaving.',
  sources: [manual('section 6B.08')],
  examples: [
    {
      given: { 'short-taper-spacing': [20, 'ft'], 'taper-kind': 'flagger' },
      finds: [20, 'ft'],
      source: 'MUTCD 11th ed., section 6B.08',
    },
  ],
});
