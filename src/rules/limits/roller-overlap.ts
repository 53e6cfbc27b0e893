import halfDrum from '../quantities/half-drum.ts';
import rollerOverlap from '../quantities/roller-overlap.ts';
import { limit } from '../shapes.ts';
import { navyBasic, rollerArticle } from '../sources-craft.ts';

export default limit({
  id: 'roller-overlap',
  title: 'roller lanes overlap',
  on: rollerOverlap,
  min: { number: 3, unit: 'in' },
  max: halfDrum,
  breaks: 'caution',
  because: 'Without overlap a line stays between two lanes; more than half a drum rolls every strip twice for nothing.',
  sources: [navyBasic('ch. 11: 3 to 4 in on hot mix, half the drum on loose fills'), rollerArticle('6 in')],
  cues: [
    'overlap roller|drum|lane|roll|rolled @check',
    'overlap|lap #length @check',
    'roller overlap how-many',
    'why overlap',
    'drum|roller|roll|rolled+strip|lane|pass touch|overlap|lap',
    'no|zero overlap|lap',
    '#length lap @check',
    'drum|roller strip|lane|pass touch|meet|lap',
    'no overlap|lap roller|drum|pass',
  ],
  text: {
    ok: '{on} of overlap is enough.',
    caution: '{on} of overlap does not suit: the bound is {limit}.',
    cannotTell: 'Tell me by how much the roller lanes overlap.',
  },
  fix: 'Lap each lane over the last by a hand and a half.',
  examples: {
    holds: { 'roller-overlap': [6, 'in'] },
    boundary: { 'roller-overlap': [3, 'in'] },
    breaks: { 'roller-overlap': [1, 'in'] },
    cannotTell: {},
    also: [
      { facts: { 'roller-overlap': [27, 'in'], 'drum-width': [4.5, 'ft'] }, is: 'ok' },
      { facts: { 'roller-overlap': [36, 'in'], 'drum-width': [4.5, 'ft'] }, is: 'caution' },
    ],
  },
});
