import { choice } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default choice({
  id: 'rolling-direction',
  title: 'where rolling starts',
  because: 'The low edge of the drum pushes downhill, and what is rolled already holds it up.',
  sources: [navyBasic('ch. 11, rolling techniques')],
  question: { text: 'From which edge is it rolled: the low one up, or the high one down?', ease: 1 },
  options: [
    {
      id: 'low-to-high',
      title: 'from the low edge up',
      cues: [
        'roll low+side|edge first|up',
        'roll from+low',
        'low high roll -which -or',
        'low+side first',
        'roll bottom up',
      ],
    },
    {
      id: 'high-to-low',
      title: 'from the high edge down',
      cues: ['roll high+side|edge first|down', 'roll from+high', 'high+side first', 'roll top down', 'roll downhill'],
    },
    {
      id: 'inside-first',
      title: 'from the inside of the curve',
      cues: ['roll inside first|start', 'roll from+inside', 'inside+edge first'],
    },
    {
      id: 'outside-first',
      title: 'from the outside of the curve',
      cues: ['roll outside first|start', 'roll from+outside', 'outside+edge first'],
    },
    {
      id: 'center-first',
      title: 'from the center line down to the shoulder',
      cues: [
        'roll from+center|centerline|crown|middle',
        'roll center|centerline|crown|middle first|start',
        'roll center|centerline|crown down|out',
        'roll down+shoulder',
        'roll crown to+shoulder',
        'start center|centerline|crown roll',
      ],
    },
    {
      id: 'shoulder-first',
      title: 'from the shoulder up to the crown',
      cues: [
        'roll from+shoulder|edge|outside',
        'roll shoulder|edge first|start|up',
        'roll shoulder to+center|crown',
        'start shoulder|edge roll',
      ],
    },
  ],
});
