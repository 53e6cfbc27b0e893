import taperKind from '../choices/taper-kind.ts';
import { manual } from '../manual.ts';
import mergingTaper from '../quantities/merging-taper.ts';
import shiftingTaper from '../quantities/shifting-taper.ts';
import longest from '../quantities/short-taper-max.ts';
import shortest from '../quantities/short-taper-min.ts';
import shoulderTaper from '../quantities/shoulder-taper.ts';
import taperLength from '../quantities/taper-length.ts';
import { limit } from '../shapes.ts';

const cannotTell =
  'Tell me the kind of taper, its length, the speed and the width closed, and I can say whether it is long enough.';
const short = {
  ok: '{on} lies within the {short-taper-min} to {short-taper-max} recommended for a flagger or downstream taper, both ends included.',
  caution: '{on} is outside the {short-taper-min} to {short-taper-max} recommended for a flagger or downstream taper.',
  cannotTell,
};

export default limit({
  id: 'taper-length',
  title: 'taper long enough',
  on: taperLength,
  breaks: 'caution',
  cases: [
    {
      when: [{ choice: taperKind, is: ['merging'] }],
      min: mergingTaper,
      breaks: 'stop',
      fix: 'Lengthen the taper before anyone works behind it, or have the person in charge change the plan in writing.',
    },
    { when: [{ choice: taperKind, is: ['shifting'] }], min: shiftingTaper },
    { when: [{ choice: taperKind, is: ['shoulder'] }], min: shoulderTaper },
    {
      when: [{ choice: taperKind, is: ['flagger', 'downstream'] }],
      min: shortest,
      max: longest,
      text: short,
      fix: 'Set it between the two; the taper in front of a flagger shows the lane, and is no place to drive at speed.',
    },
  ],
  because:
    'Too short, and drivers find the lane gone before they have found a gap; too long, and they change lanes late.',
  sources: [manual('Table 6B-3, guidance')],
  cues: [
    'taper long+check',
    '#length taper @check -cone -device',
    '#length flagger|downstream|shoulder|shift|merge taper @check -cone -device',
    'taper check+short|long',
    'short taper @check',
    'two-lane|two-way|one-lane|multilane|lane-drop|alternate #length taper @check -cone -device',
    'cone #length angled|angle|slant|across @check',
    'angled|angle|slant cone #length',
    'why taper long',
  ],
  text: {
    ok: '{on} is at least the recommended length, {limit}.',
    caution: '{on} is shorter than the {limit} recommended.',
    stop: '{on} is shorter than the {limit} a merging taper should have.',
    cannotTell,
  },
  fix: 'Lengthen the taper, or have the person in charge change the plan in writing.',
  examples: {
    holds: {
      'taper-kind': 'merging',
      'taper-length': [700, 'ft'],
      'posted-speed': [55, 'mph'],
      offset: [12, 'ft'],
      'speed-unit': 'us',
    },
    boundary: {
      'taper-kind': 'merging',
      'taper-length': [660, 'ft'],
      'posted-speed': [55, 'mph'],
      offset: [12, 'ft'],
      'speed-unit': 'us',
    },
    breaks: {
      'taper-kind': 'merging',
      'taper-length': [300, 'ft'],
      'posted-speed': [55, 'mph'],
      offset: [12, 'ft'],
      'speed-unit': 'us',
    },
    cannotTell: { 'taper-length': [300, 'ft'], 'posted-speed': [55, 'mph'], offset: [12, 'ft'], 'speed-unit': 'us' },
    also: [
      {
        facts: {
          'taper-kind': 'shifting',
          'taper-length': [330, 'ft'],
          'posted-speed': [55, 'mph'],
          offset: [12, 'ft'],
          'speed-unit': 'us',
        },
        is: 'ok',
      },
      {
        facts: {
          'taper-kind': 'shifting',
          'taper-length': [329, 'ft'],
          'posted-speed': [55, 'mph'],
          offset: [12, 'ft'],
          'speed-unit': 'us',
        },
        is: 'caution',
      },
      {
        facts: {
          'taper-kind': 'shoulder',
          'taper-length': [220, 'ft'],
          'posted-speed': [55, 'mph'],
          offset: [12, 'ft'],
          'speed-unit': 'us',
        },
        is: 'ok',
      },
      {
        facts: {
          'taper-kind': 'shoulder',
          'taper-length': [200, 'ft'],
          'posted-speed': [55, 'mph'],
          offset: [12, 'ft'],
          'speed-unit': 'us',
        },
        is: 'caution',
      },
      { facts: { 'taper-kind': 'flagger', 'taper-length': [50, 'ft'] }, is: 'ok' },
      { facts: { 'taper-kind': 'flagger', 'taper-length': [100, 'ft'] }, is: 'ok' },
      { facts: { 'taper-kind': 'flagger', 'taper-length': [300, 'ft'] }, is: 'caution' },
      { facts: { 'taper-kind': 'downstream', 'taper-length': [40, 'ft'] }, is: 'caution' },
      { facts: { 'taper-kind': 'merging', 'taper-length': [300, 'ft'] }, is: 'cannot-tell' },
    ],
  },
});
