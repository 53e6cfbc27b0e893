import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'traffic-control-state',
  title: 'traffic control',
  because: 'Signs, devices and flaggers are all that tells a driver that people stand in the lane.',
  sources: [commonPractice],
  question: { text: 'Is traffic control up: signs, devices and flaggers?', ease: 1 },
  options: [
    {
      id: 'none',
      title: 'not up',
      cues: [
        'no|without+traffic+control',
        'no|without+sign|cone|flagger -of',
        "traffic+control not|isn't|ain't up|set|there|need",
        "sign|cone not|isn't|ain't|aren't up|out|set",
        'skip sign|cone|flagger',
        'skip traffic+control',
        'not+up',
        'start|begin|work|measure before sign|cone|control up|out|set @check',
        'sign|cone|control|flagger still|while+going|go|being',
        'sign|cone|control going+up',
        'start|begin|work|sweep|unload|tack before sign|cone|control|flagger up|out|set|place -how -what -when',
        'nobody sign|cone put|set|place',
        'no+one sign|cone put|set',
        'sign|cone|control still|while+set|put|hang|place',
        'still|while set+out|up sign|cone',
        'flagger|sign|cone not+here|up|out|set|there',
        'before flagger|sign|cone set|up|out|here|ready|place -what',
        'mix|work|start|cut|sweep before flagger|sign|cone',
        'start|begin|cut|work|sweep while flagger|sign|cone',
        'want start|begin|work while|before flagger|sign|cone',
      ],
    },
    {
      id: 'up',
      title: 'signs and flaggers up',
      cues: [
        "traffic+control up|set|place -not -isn't -ain't -before -no -when -how -need",
        "sign|cone up|out -down -going -still -while -not -isn't -ain't -aren't -before -no -when -how -pick -pull -far -come -which -what -blow",
        'lane closed|shut -not -before -no -how -when',
        'flagger place|station -while -still -not -before -no -how -where -when -far',
        'sign|cone|flagger up|out|place|posted let|get|start -not -before -until -while -still -want',
        'flagger posted|place -not -before',
      ],
    },
    {
      id: 'down',
      title: 'taken down',
      cues: [
        'traffic+control down -when -before -check',
        'sign|cone pick+up -when -before -check',
        'taken+down',
        'pick|pull|need|grab+up|down sign|cone while|still',
      ],
    },
  ],
});
