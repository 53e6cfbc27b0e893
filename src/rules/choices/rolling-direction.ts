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
        'roll|rolled low+side|edge first|up -or',
        'roll|rolled from+low -or',
        'low high roll|rolled -which -or',
        'low+side first -or',
        'roll|rolled bottom up -or',
        'start+low -or',
        'low up high -or',
      ],
    },
    {
      id: 'high-to-low',
      title: 'from the high edge down',
      cues: [
        'roll|rolled high+side|edge first|down -or',
        'roll|rolled from+high -or',
        'high+side first -or',
        'roll|rolled top down -or',
        'roll|rolled downhill -or',
        'start+high -or',
      ],
    },
    {
      id: 'inside-first',
      title: 'from the inside of the curve',
      cues: ['roll|rolled inside first|start -or', 'roll|rolled from+inside -or', 'inside+edge first -or'],
    },
    {
      id: 'outside-first',
      title: 'from the outside of the curve',
      cues: ['roll|rolled outside first|start -or', 'roll|rolled from+outside -or', 'outside+edge first -or'],
    },
    {
      id: 'center-first',
      title: 'from the center line down to the shoulder',
      cues: [
        'roll|rolled from+center|centerline|crown|middle -or',
        'roll|rolled center|centerline|crown|middle first|start -or',
        'roll|rolled center|centerline|crown down|out -or',
        'roll|rolled down+shoulder -or',
        'roll|rolled crown to+shoulder -or',
        'start center|centerline|crown roll|rolled -or',
        'start+center|centerline|crown -or',
        'crown|center down shoulder -or',
      ],
    },
    {
      id: 'shoulder-first',
      title: 'from the shoulder up to the crown',
      cues: [
        'roll|rolled from+shoulder|edge|outside -or',
        'roll|rolled shoulder|edge first|start|up -or',
        'roll|rolled shoulder to+center|crown -or',
        'start shoulder|edge roll|rolled -or',
        'start+shoulder|edge -or -sign -cone',
        'shoulder up crown|center -or',
        'shoulder to+crown|center -or',
      ],
    },
  ],
});
