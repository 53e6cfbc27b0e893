import roadType from '../choices/road-type.ts';
import signGap from '../choices/sign-gap.ts';
import { manual } from '../manual.ts';
import signDistance from '../quantities/sign-distance.ts';
import a from '../quantities/sign-spacing-a.ts';
import b from '../quantities/sign-spacing-b.ts';
import c from '../quantities/sign-spacing-c.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'sign-spacing',
  title: 'signs far enough out',
  on: signDistance,
  breaks: 'caution',
  cases: [
    { when: [{ choice: signGap, is: ['a'] }], min: a },
    { when: [{ choice: signGap, is: ['b'] }], min: b },
    { when: [{ choice: signGap, is: ['c'] }], min: c },
    // In these rows the table has one figure for all three signs.
    { when: [{ choice: roadType, is: ['urban-low', 'urban-high', 'rural'] }], min: a },
  ],
  because: 'One message at a time, each with room to be read, believed and acted on before the next.',
  sources: [manual('Table 6B-1, guidance: recommended least distances')],
  cues: [
    'sign #length @check -high -tall',
    'sign close @check',
    'sign spacing|apart @check',
    'sign check+close',
    'sign far+check',
  ],
  text: {
    ok: '{on} is at least the recommended distance, {limit}.',
    caution: '{on} is closer than the {limit} recommended as the least.',
    cannotTell: 'Tell me the kind of road, which sign it is and how far out it stands.',
  },
  fix: 'Move the sign out; nearer only where it has to catch traffic that turns in, and then by whoever is in charge.',
  examples: {
    holds: { 'sign-distance': [600, 'ft'], 'road-type': 'rural' },
    boundary: { 'sign-distance': [500, 'ft'], 'road-type': 'rural' },
    breaks: { 'sign-distance': [350, 'ft'], 'road-type': 'rural' },
    cannotTell: { 'sign-distance': [350, 'ft'] },
    also: [
      { facts: { 'sign-distance': [1000, 'ft'], 'road-type': 'expressway' }, is: 'cannot-tell' },
      { facts: { 'sign-distance': [1000, 'ft'], 'road-type': 'expressway', 'sign-gap': 'a' }, is: 'ok' },
      { facts: { 'sign-distance': [1000, 'ft'], 'road-type': 'expressway', 'sign-gap': 'b' }, is: 'caution' },
      { facts: { 'sign-distance': [2640, 'ft'], 'road-type': 'expressway', 'sign-gap': 'c' }, is: 'ok' },
    ],
  },
});
