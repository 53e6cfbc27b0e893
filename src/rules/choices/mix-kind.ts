import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'mix-kind',
  title: 'mix',
  because:
    'Hot mix packs only while it is hot; cold mix stays workable for days and packs as it dries and under traffic.',
  sources: [commonPractice],
  question: { text: 'Is it hot mix or cold mix?', ease: 1 },
  options: [
    {
      id: 'hot',
      title: 'hot mix',
      cues: [
        'hot+mix',
        'hot+lift',
        'hot+load',
        'hot+plant+mix',
        'mix hot -not',
        'hot+stuff|mix|mat|one',
        'lift|inch|load+hot -how -not',
        '#length+hot',
      ],
    },
    {
      id: 'cold',
      title: 'cold mix',
      cues: ['cold+mix', 'cold+patch', 'stockpile', 'cold+laid', 'mix pile', 'cold+stuff|pile|lift'],
    },
  ],
});
