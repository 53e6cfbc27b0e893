import { choice } from '../shapes.ts';
import { ltpp } from '../sources-work.ts';

export default choice({
  id: 'edge-break-state',
  title: 'edge',
  because: 'An edge that still holds can be sealed; where pieces are gone the road grows narrower with every truck.',
  sources: [ltpp('edge cracking')],
  question: { text: 'Is the edge cracked but whole, broken in places, or gone over most of it?', ease: 1 },
  options: [
    {
      id: 'gone',
      title: 'gone over most of it',
      cues: [
        'edge gone|missing -place',
        'edge broke|broken|fell|breaking+off',
        'edge crumble|crumbling|fall|falling',
        'max gone',
      ],
    },
    {
      id: 'places',
      title: 'broken in places',
      cues: ['edge broke|broken|chip|chipped|chunk place|spot|here', 'broken places|place', 'bite|bites edge'],
    },
    {
      id: 'cracked',
      title: 'cracked but whole',
      cues: ['edge crack -broke -broken -gone', 'crack+along+edge -broke -broken', 'cracked+whole', 'crack whole'],
    },
  ],
});
