import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { bladeSpreading } from '../sources-craft.ts';
import { taught } from '../sources-work.ts';

export default fault({
  id: 'tearing',
  title: 'tearing',
  seen: 'a mat pulled open, with holes and loose stone behind the blade',
  because: 'A stone that does not fit under the edge is dragged, and tears the mix it lies in.',
  sources: [bladeSpreading('layers not thinner than 1 1/2 times the largest stone'), commonPractice],
  cues: [
    'tear|tore|torn mat|mix|lift|surface|open|behind',
    'rip mat|mix|lift|surface|open|behind|blade',
    'pull mat|mix|surface|apart|open|hole -truck',
    'mat|surface|mix open+up',
    'mat|surface|mix hole|gap behind|under|blade',
    'blade pull mix|mat|lift',
    'mat torn|rip',
  ],
  causes: [
    { text: 'too much down pressure', remedy: 'ease off until the edge floats', source: commonPractice },
    {
      text: 'a lift too thin for the stone',
      remedy: 'lay it thicker, or bring a finer mix[[: at least {lift-min} for this stone]]',
      rule: 'lift-min',
      source: bladeSpreading('layers not thinner than 1 1/2 times the largest stone'),
    },
    { text: 'mix gone cold, or a dull edge', remedy: 'fresher mix; change the edge', source: taught },
    { text: 'worked too often', remedy: 'fewer passes', rule: 'fewest-passes', source: commonPractice },
  ],
  now: 'Ease the blade, fill the tears with fine mix while it is warm, and roll.',
  nextTime: 'Match the lift to the stone before the row is built; roll the blade forward.',
  examples: {
    finds: ['the blade keeps ripping the surface open', 'mat is pulling apart behind the blade and leaves holes'],
    not: ['long thin scratches in the finish', 'the patch crawls ahead of the roller'],
  },
});
