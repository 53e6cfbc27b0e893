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
      ],
    },
    { id: 'across', title: 'across the road', cues: ['straightedge across|crosswise|transverse'] },
  ],
});
