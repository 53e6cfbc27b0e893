import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'straightedge-way',
  title: 'way the straightedge lies',
  because: 'A wave along the road is felt sooner than one across it.',
  sources: [commonPractice],
  default: 'across',
  options: [
    {
      id: 'along',
      title: 'along the road',
      cues: [
        'straightedge along|lengthwise|longitudinal|parallel|wheel+path',
        'along+road|lane|centerline gap|straightedge',
        'board|edge|straightedge lengthwise|longitudinal|longways',
        'board along|parallel gap|under|daylight',
        'straightedge running|run|laid with+road|lane|traffic',
        'board|edge with+road|traffic|lane',
      ],
    },
    {
      id: 'across',
      title: 'across the road',
      cues: [
        'straightedge across|crosswise|transverse',
        'board across|crosswise|transverse|crossways',
        'gap across+lane|road',
        'straightedge|board side+to+side',
      ],
    },
  ],
});
