import { choice } from '../shapes.ts';
import { texasDistress } from '../sources-work.ts';

export default choice({
  id: 'rut-edges',
  title: 'edges of the rut',
  because:
    'A rut that is only pressed down has level edges; where the mix flows sideways it stands up beside the wheels.',
  sources: [texasDistress],
  question: { text: 'Does the mix stand up in humps beside the rut, or are its edges level?', ease: 1 },
  default: 'level',
  options: [
    {
      id: 'level',
      title: 'level edges',
      cues: ['no+hump|bulge|heave', 'level+edge', 'edge+level', "not|isn't+flow|shove"],
    },
    {
      id: 'humped',
      title: 'humps beside it',
      cues: [
        'hump|ridge|bulge|heave beside|side|along|next',
        'hump',
        'mix|rut flow',
        'shove|squeezed side|beside|sideways',
      ],
    },
  ],
});
