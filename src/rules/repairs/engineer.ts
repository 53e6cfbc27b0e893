import { commonPractice } from '../shapes.ts';
import { repair } from '../shapes-work.ts';
import { fm5436 } from '../sources-craft.ts';

export default repair({
  id: 'engineer',
  title: "the engineer's call",
  because: 'Weight, clearance, moving ground or a road that keeps failing are not settled with mix.',
  sources: [commonPractice, fm5436('ch. 7, paras 7-1 to 7-4')],
  cues: [
    'when call engineer',
    'engineer check|need',
    'sinkhole',
    'road|lane|hill|bank|ground slide|slid|sliding',
    'settle|sink bridge|approach|pipe|culvert',
  ],
  named: ['engineer'],
  how: [
    'Do not cover it. Make it safe: sign it, or fill the hole for the day.',
    'Write down the place, the size, the depth, the water, what was done before, and take photos.',
    'Call the engineer with that.',
  ],
  rules: [],
  caution: 'If the road may give way, keep traffic and machines off it.',
});
