import { manual } from '../manual.ts';
import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { taught } from '../sources-work.ts';

export default step({
  id: 'traffic-control-down',
  title: 'traffic control down',
  because: 'As long as one device stands, a driver must have been warned of it; so the warning goes last.',
  sources: [manual('6A.03'), taught, commonPractice],
  text: 'Only when the road may carry traffic: men, machines and material out first; then take up from the downstream end back to the taper, against the traffic flow, one direction finished before it is freed. The advance signs come in last.',
  checks: [
    'Rolled, cool, no loose stone, no exposed tack, no unsigned lip, the line or its sign in place.',
    'No row is left on the road.',
    'Signs for what stays behind are up: uneven lanes, low shoulder, no center line.',
    'Write down when the signs came down.',
  ],
  cautions: [
    'Setting up and taking down is when crews are most exposed: lights on, a lookout, nobody with his back to traffic.',
  ],
  good: 'Nothing stays on the road that is no longer true.',
  rules: ['traffic-control-last', 'open-to-traffic', 'overnight'],
  named: ['traffic+control+down', 'pick|need+up|down+sign|cone|traffic', 'sign+down'],
  doneCues: [
    'sign|cone back|loaded trailer|truck|shop|yard -not -when -before',
    'traffic+control down|gone -not -when -check',
    'sign|cone down -order -which -#length -not -when -check -before -blow|blown -fell',
    'sign|cone+in -order -which -#length -not -when -check -before -blow|blown -fell',
    'sign|cone pick+up -not -when -check -before -first',
    'everything|everybody|all off|out road|lane -shoulder -not -check -when -before',
    'road|lane open -not -check -when -#length -#speed -wide',
    'sign|cone loaded|stacked|put+away -not',
    'sign|cone+loaded',
  ],
  cues: [
    'how need|pick down|up sign|cone|control',
    'which sign come|pick last|first|down',
    'need|pick order sign|cone down|up',
    'need down traffic+control',
    'order|which sign|cone|control down|off|remove -up',
  ],
});
