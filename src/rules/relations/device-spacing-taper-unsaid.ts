import { constant, smaller, split } from '../../calc/expression.ts';
import { manual } from '../manual.ts';
import deviceSpacingTaper from '../quantities/device-spacing-taper.ts';
import longTaperSpacing from '../quantities/long-taper-spacing.ts';
import longestShort from '../quantities/short-taper-max.ts';
import shortTaperSpacing from '../quantities/short-taper-spacing.ts';
import taperLength from '../quantities/taper-length.ts';
import { relation } from '../shapes.ts';

const longest = constant(longestShort.default!.number, longestShort.default!.unit);
const short = constant(shortTaperSpacing.default!.number, shortTaperSpacing.default!.unit);

/** Whatever the kind, this spacing is never too wide: a taper longer than the short ones is none of them. */
export default relation({
  id: 'device-spacing-taper-unsaid',
  title: 'spacing by the length of the taper',
  finds: deviceSpacingTaper,
  by: split(taperLength, longest, smaller(short, longTaperSpacing), longTaperSpacing),
  bothWays: false,
  second: true,
  because:
    'A taper longer than a flagger or downstream taper may be is neither; a shorter one gets the closer spacing, which is right for every kind.',
  sources: [manual('section 6K.01, paragraph 4; section 6B.08; Table 6B-3')],
  examples: [
    {
      given: { 'taper-length': [660, 'ft'], 'long-taper-spacing': [55, 'ft'] },
      finds: [55, 'ft'],
      source: 'MUTCD 11th ed., section 6K.01: too long for a flagger taper',
    },
    {
      given: { 'taper-length': [100, 'ft'], 'long-taper-spacing': [55, 'ft'] },
      finds: [20, 'ft'],
      source: 'MUTCD 11th ed., section 6B.08: it may be a flagger taper',
    },
  ],
  note: 'The kind of taper was not said: up to the longest flagger or downstream taper the closer spacing is used.',
});
