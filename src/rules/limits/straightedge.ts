import straightedgeWay from '../choices/straightedge-way.ts';
import straightedgeGap from '../quantities/straightedge-gap.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'straightedge',
  title: 'smooth under a 10 ft straightedge',
  on: straightedgeGap,
  max: { number: 0.25, unit: 'in' },
  breaks: 'caution',
  cases: [
    { when: [{ choice: straightedgeWay, is: ['across'] }] },
    { when: [{ choice: straightedgeWay, is: ['along'] }], max: { number: 0.125, unit: 'in' } },
  ],
  because: 'A wave along the road is felt at speed; a low across it holds water.',
  sources: [
    {
      document: 'state specification amendment on surface smoothness',
      issuer: 'issuer not shown',
      place: '1/8 in in 10 ft along, 1/4 in across',
      seen: 'read',
    },
  ],
  cues: [
    'smooth @enough check -drum -roller -wheel',
    'straightedge',
    'straight+edge',
    'gap|daylight under @check',
    'how+smooth',
    'board gap|daylight|under',
    'gap|daylight board|edge|straightedge',
    'board #length laid|across|along|lengthwise gap|under|daylight',
    '#thin across|along|under ten|10|foot|footer @check',
  ],
  text: {
    ok: '{on} under the straightedge is within {limit}.',
    caution: '{on} under the straightedge is over the {limit} allowed.',
    cannotTell: 'Tell me the gap under a 10 ft straightedge and which way it lay.',
  },
  fix: 'While it is warm loosen and fill the low spot, or rake off the high one, and roll again.',
  examples: {
    holds: { 'straightedge-gap': [0.1875, 'in'], 'straightedge-way': 'across' },
    boundary: { 'straightedge-gap': [0.25, 'in'], 'straightedge-way': 'across' },
    breaks: { 'straightedge-gap': [0.375, 'in'], 'straightedge-way': 'across' },
    cannotTell: {},
    also: [
      { facts: { 'straightedge-gap': [0.125, 'in'], 'straightedge-way': 'along' }, is: 'ok' },
      { facts: { 'straightedge-gap': [0.1875, 'in'], 'straightedge-way': 'along' }, is: 'caution' },
    ],
  },
});
