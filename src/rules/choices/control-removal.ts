import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'control-removal',
  title: 'how traffic control comes down',
  because: 'Whoever takes up the taper is working in the road: the signs still have to warn for him.',
  sources: [manual('section 6A.03')],
  options: [
    {
      id: 'signs-first',
      title: 'advance signs come down first',
      cues: [
        'grab|get|collect|load|yank|snatch sign first -which -what -up -set',
        'cone last grab|get|let|come|leave sign -which -what',
        'sign first pick|pull|remove|removed|down -which -what -order -or -when',
        'pick|pull|remove sign before cone|taper -which -what',
        'sign down before cone|taper -which -what',
        'cone|taper last pick|pull|down -which -what',
      ],
    },
    {
      id: 'while-working',
      title: 'it comes down while the crew is still on the road',
      cues: [
        'load|pick|pull|grab sign|cone unfinished',
        'pull|pick|remove|down sign|control|flagger|cone still|while|during',
        'sign|control|cone down|pick|pull|remove before clean|clean-up|final|roll|finish',
        'flagger home before|early',
        'pull|pick|remove|need sign|cone|control then|after|later sweep|clean|roll|rolled|finish -last -before+after',
        'pull|pick|remove|need sign|cone|control now sweep|clean|roll|finish',
        'flagger home|leave|gone before|early',
        'sign|cone|control down|off while|before|still',
        'send flagger home',
        'load|pick|pull sign|cone roller|roll|sweep not|still|but|while',
      ],
    },
    {
      id: 'signs-last',
      title: 'everything else first, advance signs last',
      cues: ['sign last pick|pull|down|remove -last+thing|step -while -still -before -roller', 'sign come+down+last'],
    },
  ],
  question: { text: 'Is the crew off the road, and do the advance signs come down last?', ease: 1 },
});
