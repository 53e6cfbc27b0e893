import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'row-end',
  title: 'how the row ends',
  because: 'A row of the right size gives out where the patch does.',
  sources: [commonPractice],
  question: { text: 'How does the mix end: just before the end, with a pile left, dragged on, or short?', ease: 1 },
  options: [
    {
      id: 'dragged-on',
      title: 'dragged on down the road',
      cues: [
        'drag mix|windrow|pile|rest|left+over down+road',
        'drag|carry left|rest|extra|pile down|along+road',
        'string out+road',
        'drag left|leftover|rest|pile|mix down|along|road',
        'drag down+road',
      ],
    },
    {
      id: 'pile-left',
      title: 'a pile left at the end',
      cues: [
        'pile left|end|over',
        'left+over mix end',
        'mix left end -foot -feet -past',
        'heap end',
        'pile|heap|glob end|left',
      ],
    },
    {
      id: 'short',
      title: 'gave out short',
      cues: ['ran|run+out|short windrow|mix before', 'came|come+up+short', 'windrow gave+out early', 'ran+short'],
    },
    {
      id: 'even',
      title: 'gave out just before the end',
      cues: [
        'windrow|mix ran|run|gave|give+out check|just end|before',
        'came|come+out+even',
        'nothing left end',
        'mix|windrow ran|gave|run|gone+out end no|nothing|without|just',
      ],
    },
  ],
});
