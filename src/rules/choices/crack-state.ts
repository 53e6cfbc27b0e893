import { choice } from '../shapes.ts';
import { ltpp } from '../sources-work.ts';

export default choice({
  id: 'crack-state',
  title: 'cracking',
  because: 'Cracks first run singly, then join, then the pieces between them come loose: each stage carries less.',
  sources: [ltpp('fatigue cracking')],
  question: {
    text: 'How far is the cracking: a few fine cracks, a network that is still tight, or loose pieces?',
    ease: 1,
  },
  options: [
    {
      id: 'loose',
      title: 'loose pieces',
      cues: [
        'piece rocking|wobble|rattle',
        'piece loose|stone|move|missing|pop|come|coming|out -not',
        'chunk|piece+out|missing',
        'spalled',
        'crack crumble',
        'broken|break+up crack',
        'loose crack',
      ],
    },
    {
      id: 'network',
      title: 'a network, still tight',
      cues: ['crack network|pattern|connected|tight', 'alligator tight', 'network tight', 'no+loose+piece'],
    },
    {
      id: 'hairline',
      title: 'a few fine cracks',
      cues: ['hairline', 'few|couple crack', 'light|minor|slight crack|alligator -traffic -stop', 'check+crack'],
    },
  ],
});
