import mixKind from '../choices/mix-kind.ts';
import layTime from '../quantities/lay-time.ts';
import loadRollingTime from '../quantities/load-rolling-time.ts';
import timeToRoll from '../quantities/time-to-roll.ts';
import { commonPractice, limit } from '../shapes.ts';

export default limit({
  id: 'roller-keeps-up',
  title: 'the roller keeps up',
  on: loadRollingTime,
  breaks: 'caution',
  cases: [
    {
      when: [{ choice: mixKind, is: ['hot'] }],
      max: timeToRoll,
      breaks: 'stop',
      text: {
        ok: 'Rolling what one load covers takes {on}; by the estimate it stays hot for {limit}.',
        stop: 'Rolling what one load covers takes {on}, but by the estimate it is too cold after {limit}: that stretch is never packed.',
        cannotTell:
          'Tell me the thickness, the temperature behind the blade and of the road, and what the roller is, and I can say whether it keeps up.',
      },
      fix: 'Lay a shorter stretch ahead of the roller, put on a wider or a second one, or wait for a warmer day.',
    },
    { when: [{ choice: mixKind, is: ['cold'] }], max: layTime },
  ],
  because: 'Hot mix packs only while it is hot; cold mix waits, but trucks behind a slow roller stand in the road.',
  sources: [
    {
      document: 'UFGS 02749, hot-mix guide specification',
      issuer: 'US Department of Defense',
      place: 'compaction: rollers enough for the plant output',
      seen: 'read',
    },
    commonPractice,
  ],
  cues: [
    'roller keep+up @check',
    'roller keep+up',
    'one|single roller check',
    'roller @check time|cool|cold|hot roll|rolled',
    'fast roller check @enough',
    'roller behind @check',
    '#time roll|rolled truck|load every|come|show|only|till|til|left',
    '#time roll|rolled check+cold|cool',
    'hot cold|cool quick|quicker|fast|faster|before roll|rolled -tack',
  ],
  text: {
    ok: 'Rolling what one load covers takes {on}, and the next one comes after {limit}: it keeps up.',
    caution:
      'Rolling what one load covers takes {on}, but the next one comes after {limit}: trucks will wait. With cold mix that is pace only.',
    cannotTell:
      'Tell me hot or cold mix, the size of a load, the width and thickness, how hot it is or how often a truck comes, and I can say whether the roller keeps up.',
  },
  fix: 'Space the trucks out, or put on a wider or a second roller.',
  examples: {
    holds: { 'load-rolling-time': [5, 'min'], 'time-to-roll': [7, 'min'], 'mix-kind': 'hot' },
    boundary: { 'load-rolling-time': [7, 'min'], 'time-to-roll': [7, 'min'], 'mix-kind': 'hot' },
    breaks: { 'load-rolling-time': [15, 'min'], 'time-to-roll': [7, 'min'], 'mix-kind': 'hot' },
    cannotTell: { 'load-rolling-time': [15, 'min'] },
    also: [
      { facts: { 'load-rolling-time': [15, 'min'], 'lay-time': [20, 'min'], 'mix-kind': 'cold' }, is: 'ok' },
      { facts: { 'load-rolling-time': [25, 'min'], 'lay-time': [20, 'min'], 'mix-kind': 'cold' }, is: 'caution' },
      { facts: { 'load-rolling-time': [15, 'min'], 'mix-kind': 'cold' }, is: 'cannot-tell' },
    ],
  },
});
