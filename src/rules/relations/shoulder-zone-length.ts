import { plus } from '../../calc/expression.ts';
import bufferLength from '../quantities/buffer-length.ts';
import patchLength from '../quantities/patch-length.ts';
import shoulderTaper from '../quantities/shoulder-taper.ts';
import shoulderZoneLength from '../quantities/shoulder-zone-length.ts';
import a from '../quantities/sign-spacing-a.ts';
import b from '../quantities/sign-spacing-b.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'shoulder-zone-length',
  title: 'two signs, taper, buffer and work',
  finds: shoulderZoneLength,
  by: plus(a, b, shoulderTaper, bufferLength, patchLength),
  bothWays: false,
  because: 'The parts follow one another in the direction of traffic.',
  sources: [geometry],
  examples: [
    {
      given: {
        'sign-spacing-a': [500, 'ft'],
        'sign-spacing-b': [500, 'ft'],
        'shoulder-taper': [220, 'ft'],
        'buffer-length': [495, 'ft'],
        'patch-length': [300, 'ft'],
      },
      finds: [2015, 'ft'],
      source: 'rural road at 55 mph, a shoulder of 12 ft, 300 ft of work: 500 + 500 + 220 + 495 + 300',
    },
  ],
});
