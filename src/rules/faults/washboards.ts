import wavePlace from '../choices/wave-place.ts';
import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { navyBasic } from '../sources-craft.ts';
import { taught } from '../sources-work.ts';

export default fault({
  id: 'washboards',
  title: 'washboards',
  seen: 'ripples across the mat, close together',
  because: 'A machine that bounces lets its edge rise and fall, and the edge prints each bounce into the mat.',
  sources: [navyBasic('ch. 10, graders, p. 10-14'), commonPractice],
  cues: [
    'washboard',
    'wash+board',
    'ripple',
    'ripple|wave|washboard blade|grader|left|leave|make -stop-sign -intersection -old -pass+by',
    'corrugation|corrugated',
    'grader|machine|blade bounce|hop|chatter -truck',
    'bounce mat|mark|wave|ridge|pass|lay -end -car',
    'wave|wavy across mat|patch|lane|lift',
    'wave|ridge|bump every+foot|few',
    'scallop across',
    'bump|hump|ridge|wave every #length|#number -end',
    'bump|hump straight+across',
    'bump|hump|wave|ridge blade|grader fast|speed -end',
    'chatter mark',
    'little|small+ridge|wave|hump across|crosswise',
    'wavy crosswise|crossways',
    'wave crosswise|crossways',
    'machine|grader buck|bucking|hop',
    'corrugate',
  ],
  causes: [
    {
      text: 'ground speed too high for laying',
      remedy: 'a lower gear with the throttle left open',
      rule: 'lay-speed',
      source: navyBasic('ch. 10, graders, p. 10-14'),
    },
    { text: 'soft or unequal tires', remedy: 'check and even the pressures', source: taught },
    { text: 'a worn, scalloped or loose cutting edge', remedy: 'tighten it, or change it', source: taught },
    { text: 'a slack circle', remedy: 'take up the wear', source: taught },
    { text: 'an engine that surges', remedy: 'have it seen to; lay no mix with it', source: taught },
  ],
  now: 'Slow down and lay it again while it is warm. Gone cold: cut the tops off before the next lift; rolling alone does not take them out.',
  nextTime: 'Low gear, throttle open; look at tires, edge and circle before the shift.',
  apart: { by: wavePlace, heard: ['scallop'], leads: { 'outer-edge': { fault: 'scallops' } } },
  examples: {
    finds: [
      'grader is bouncing and leaving ripples across the mat',
      'little ridges crosswise every foot behind the blade',
      'the machine is hopping and the mat comes out wavy across the lane',
    ],
    not: [
      'edge of the mat looks scalloped, in and out all along',
      'there is a ridge down the pick up line',
      'mix sticks to the drum',
    ],
  },
});
