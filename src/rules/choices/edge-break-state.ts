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
      cues: ['edge gone|missing -place', 'edge broke|broken|fell|break+off', 'edge crumble|fall|falling', 'max gone'],
    },
    {
      id: 'places',
      title: 'broken in places',
      cues: ['edge broke|broken|chip|chunk place|spot|here', 'broken place', 'bite edge'],
    },
    {
      id: 'cracked',
      title: 'cracked but whole',
      cues: ['edge crack -broke -broken -gone', 'crack+along+edge -broke -broken', 'crack+whole', 'crack whole'],
    },
  ],
});
