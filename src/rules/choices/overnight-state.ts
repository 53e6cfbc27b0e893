import { choice, commonPractice } from '../shapes.ts';
import { everett } from '../sources-craft.ts';

export default choice({
  id: 'overnight-state',
  title: 'how the patch is left for the night',
  because: 'In the dark nobody sees a row or a lip until the wheel is on it.',
  sources: [everett('SP-63, 26 March 2025: temporary ramps 20 to 1'), commonPractice],
  question: { text: 'What is left: a row in the lane, a lip, ends ramped and signed, or the lane closed?', ease: 1 },
  options: [
    {
      id: 'row-in-lane',
      title: 'a row in an open lane',
      cues: [
        'leave|left+windrow out|open',
        'windrow overnight|night|tonight|tomorrow',
        'leave|left windrow lane|road',
        'leave|left mix|pile lane|road overnight|night|tonight',
        'windrow leave|left|sit overnight|night|tonight|morning|tomorrow lane|road',
      ],
    },
    {
      id: 'bare-lip',
      title: 'a lip with no ramp or sign',
      cues: [
        'leave|left lip|step|edge|end overnight|night|tonight -ramp -ramped -sign -signed',
        'lip|step overnight -ramp -ramped -sign -signed',
        'no|without+ramp lip|step|edge|end',
        'no|without+sign lip|step|edge|end',
        'edge|lip|end no|without|not ramp|ramped overnight|night|tonight',
        'lip overnight|night|tonight|open no|without',
      ],
    },
    {
      id: 'ramped',
      title: 'ends ramped and signed',
      cues: [
        'ramp|ramped overnight|night|tonight -no -without -not',
        'leave|left ramp|ramped -no -without -not',
        'ramped signed',
        'ramp|ramped rolled|sign|signed|end -no -without -not',
        'end ramp|ramped',
      ],
    },
    {
      id: 'closed',
      title: 'lane closed',
      cues: ['lane closed|close overnight|night|tonight', 'leave|keep lane closed'],
    },
  ],
});
