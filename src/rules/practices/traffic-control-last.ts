import removal from '../choices/control-removal.ts';
import { manual } from '../manual.ts';
import { practice, type Source } from '../shapes.ts';

const texas: Source = {
  document: 'Removal of temporary traffic control, practice of the Texas DOT',
  issuer: 'National Work Zone Safety Information Clearinghouse',
  seen: 'read',
};

export default practice({
  id: 'traffic-control-last',
  title: 'traffic control comes down last',
  on: removal,
  because:
    'The most exposed minutes of the day are those of taking up the devices: the signs still have to warn for whoever does it.',
  sources: [texas, manual('section 6A.03, paragraph 4: devices are removed as soon as practical')],
  cues: [
    'load|pick|pull|grab sign|cone unfinished',
    'sign|cone load|pick|pull unfinished|roller|roll',
    'sign|control|cone come|need|pick|pull+down|up @check',
    'when sign|control|cone down|remove|pick|pull',
    'order|which remove|pick|pull sign|cone',
    'sign first|last down|pick|pull|remove -last+thing|step|lift',
    'traffic+control last',
    'pick+up sign|cone',
    'pull|pick|need|remove|drop sign|cone|control @check',
    'pull|pick|need|remove sign|cone|control now|early|before|then|after|later -board',
    'sign|cone|control down|up before|while|still sweep|roll|rolled|clean|crew|finish @check',
    'flagger|crew|guy pick|pull|need|grab sign|cone while|before|still @check',
    'start+pick|pull sign|cone',
    'sign|cone pick|pull|need|grab while roller|roll|rolled|grader',
    'send flagger home|early',
    'flagger home|leave before',
    'why sign last|end|till',
    'load|pick|pull sign|cone roller|roll|sweep not|still|while',
  ],
  judged: {
    'signs-first': {
      status: 'stop',
      text: 'The advance signs are the last to go: without them nobody warns for the crew that takes up the rest.',
    },
    'while-working': {
      status: 'stop',
      text: 'Traffic control stays until clean-up is done and people and machines are off the road.',
    },
    'signs-last': {
      status: 'ok',
      text: 'Clean-up first, then the downstream devices, the buffer and the taper, working against traffic; the advance signs last.',
    },
  },
  cannotTell:
    'Clean-up first, then everything else, the advance signs last. Tell me whether the crew is off the road and what comes down first.',
  fix: 'People, machines and material out; then downstream devices, work space and buffer, taper; advance signs last.',
});
