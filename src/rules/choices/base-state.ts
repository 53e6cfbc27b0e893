import { choice } from '../shapes.ts';
import { fm5436 } from '../sources-craft.ts';

export default choice({
  id: 'base-state',
  title: 'base',
  because: 'Mix takes the shape of what carries it: over a base that moves, any skin breaks again.',
  sources: [fm5436('ch. 7, paras 7-1 to 7-4')],
  question: { text: 'Is the base under it firm, or soft: does it move or pump under a loaded truck?', ease: 2 },
  options: [
    {
      id: 'soft',
      title: 'soft or pumping',
      cues: [
        'base|ground|subgrade|bottom soft|mush|mushy|spongy|move|bad|fail|wet|rotten|give|gone|shot',
        'base|underneath|under pump -gallon',
        'pump water|fines|mud|silt',
        'mud|water|fines|silt squirt|spurt|ooze crack|piece|truck|under|road|pass',
        'mud|fines|silt come|coming+up|out',
        'spongy|mushy -mat',
        'mush|mud underneath|under|below',
        "base not|isn't|ain't firm|solid|hard|check",
        'old+road|pavement move|give|pump',
        'soft+pump',
      ],
    },
    {
      id: 'firm',
      title: 'firm',
      cues: [
        "base|ground|bottom|subgrade firm|solid|hard|check|sound|dry|tight|stable -not -isn't -ain't -soft",
        "firm|solid -not -isn't -ain't -shoulder -edge",
        "not|doesn't|don't+move|pump",
        'no+pump|movement',
      ],
    },
  ],
});
