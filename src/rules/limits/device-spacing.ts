import devicePlace from '../choices/device-place.ts';
import { manual } from '../manual.ts';
import asFound from '../quantities/device-spacing.ts';
import onTangent from '../quantities/device-spacing-tangent.ts';
import onTaper from '../quantities/device-spacing-taper.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'device-spacing',
  title: 'cones close enough',
  on: asFound,
  breaks: 'caution',
  cases: [
    { when: [{ choice: devicePlace, is: ['taper'] }], max: onTaper },
    { when: [{ choice: devicePlace, is: ['tangent'] }], max: onTangent },
  ],
  because: 'Too far apart they are single cones, and a driver goes between them.',
  sources: [manual('section 6K.01, paragraph 4, guidance')],
  cues: [
    'space|spaced|set|put cone|device|drum|it|em|them #length apart|space|spaced @check',
    'space|spaced em|it #length|#number',
    'cone|device #length apart|spacing|every|taper|along @check',
    'cone|device #length taper|tangent @check',
    'cone|device spacing|apart @check',
    'cone|device check+far+apart',
    'cone|device far+apart @check',
    'drum #length apart|spacing|every|space @check',
    'drum spacing|apart @check',
    'drum|cone|device #length apart taper|tangent @check',
    'cone|device|drum every #length @check',
    'cone #length straight|tangent|taper|merge @check -long -angled -angle',
    'between+cone|device|drum #length',
    'cone|device #length between|apart @check',
    'cone|device|drum every #length taper|tangent|merge -how-many',
  ],
  text: {
    ok: '{on} is at most the recommended spacing, {limit}.',
    caution: '{on} is wider than the {limit} recommended as the most.',
    cannotTell:
      'Tell me the speed, the spacing, and whether the devices stand on a taper, which kind, or along the work.',
  },
  fix: 'Set them closer.',
  examples: {
    holds: {
      'device-spacing': [40, 'ft'],
      'device-place': 'taper',
      'taper-kind': 'merging',
      'posted-speed': [55, 'mph'],
    },
    boundary: {
      'device-spacing': [55, 'ft'],
      'device-place': 'taper',
      'taper-kind': 'merging',
      'posted-speed': [55, 'mph'],
    },
    breaks: {
      'device-spacing': [110, 'ft'],
      'device-place': 'taper',
      'taper-kind': 'merging',
      'posted-speed': [55, 'mph'],
    },
    cannotTell: { 'device-spacing': [55, 'ft'], 'posted-speed': [55, 'mph'] },
    also: [
      { facts: { 'device-spacing': [110, 'ft'], 'device-place': 'tangent', 'posted-speed': [55, 'mph'] }, is: 'ok' },
      {
        facts: { 'device-spacing': [120, 'ft'], 'device-place': 'tangent', 'posted-speed': [55, 'mph'] },
        is: 'caution',
      },
      {
        facts: {
          'device-spacing': [55, 'ft'],
          'device-place': 'taper',
          'taper-kind': 'flagger',
          'short-taper-spacing': [20, 'ft'],
          'posted-speed': [55, 'mph'],
        },
        is: 'caution',
      },
      {
        facts: { 'device-spacing': [55, 'ft'], 'device-place': 'taper', 'posted-speed': [55, 'mph'] },
        is: 'cannot-tell',
      },
    ],
  },
});
