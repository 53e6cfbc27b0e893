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
        'roll|rolled low+side|edge first|up -or -which -what',
        'roll|rolled from+low -or -which -what',
        'low high roll|rolled -which -or -which -what',
        'low+side first -or -which -what',
        'roll|rolled bottom up -or -which -what',
        'start+low -or -which -what',
        'low up high -or -which -what',
      ],
    },
    {
      id: 'high-to-low',
      title: 'from the high edge down',
      cues: [
        'roll|rolled high+side|edge first|down -or -which -what',
        'roll|rolled from+high -or -which -what',
        'high+side first -or -which -what',
        'roll|rolled top down -or -which -what',
        'roll|rolled downhill -or -which -what',
        'start+high -or -which -what',
      ],
    },
    {
      id: 'inside-first',
      title: 'from the inside of the curve',
      cues: [
        'roll|rolled inside first|start -or -which -what',
        'roll|rolled from+inside -or -which -what',
        'inside+edge first -or -which -what',
        'roll|rolled inside+edge|side -or -which -what',
        'roll|rolled begin|began|start inside -or -which -what',
        'inside outside roll|rolled up|work|out began|begin|start -or -which -what',
        'start|begin|began+inside -or -which -what',
      ],
    },
    {
      id: 'outside-first',
      title: 'from the outside of the curve',
      cues: [
        'roll|rolled outside first|start -or -which -what',
        'roll|rolled from+outside -or -which -what',
        'outside+edge first -or -which -what',
        'roll|rolled begin|began|start outside -or -which -what',
        'start|begin|began+outside -or -which -what',
        'roll|rolled outside+edge|side -or -which -what',
      ],
    },
    {
      id: 'center-first',
      title: 'from the center line down to the shoulder',
      cues: [
        'roll|rolled from+center|centerline|crown|middle -or -which -what',
        'roll|rolled center|centerline|crown|middle first|start -or -which -what',
        'roll|rolled center|centerline|crown down|out -or -which -what',
        'roll|rolled down+shoulder -or -which -what',
        'roll|rolled crown to+shoulder -or -which -what',
        'start center|centerline|crown roll|rolled -or -which -what',
        'start+center|centerline|crown -or -which -what',
        'crown|center down shoulder -or -which -what',
        'start|begin|began yellow+line work|down|out|toward -or -which -what',
        'drum|roller|roll|rolled start|begin|began yellow|center|centerline|crown -or -which -what',
      ],
    },
    {
      id: 'shoulder-first',
      title: 'from the shoulder up to the crown',
      cues: [
        'roll|rolled from+shoulder|edge|outside -inside -or -which -what',
        'roll|rolled shoulder|edge first|start|up -inside -or -which -what',
        'roll|rolled shoulder to+center|crown -or -which -what',
        'start shoulder|edge roll|rolled -inside -or -which -what',
        'start+shoulder|edge -or -sign -cone',
        'shoulder up crown|center -or -which -what',
        'shoulder to+crown|center -or -which -what',
      ],
    },
  ],
});
