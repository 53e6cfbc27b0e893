import { fault } from '../shapes-work.ts';
import { bladeSpreading } from '../sources-craft.ts';

export default fault({
  id: 'wheel-ridges',
  title: 'wheel ridges',
  seen: 'the tracks of the grader showing through the finish as ridges',
  because: 'Tires pack the loose mat in two tracks only; the next lift settles more beside them than on them.',
  sources: [bladeSpreading('tire tracks show as ridges unless each layer is rolled')],
  cues: [
    'tire ran|went|roll|rolled|pass stripe|high|ridge|line|mark|stand -tack -roller+tire',
    'stripe high|stand|proud|raise -paint -tack -bar',
    'tire|wheel track|ridge|mark|line grader|show|through|finish|mat|patch|lift -tack -roller',
    'grader+track|tire|wheel show|through|mark|ridge',
    'track|ridge show|come|coming|telegraph through -tack',
    'ridge two|wheel|tire',
    'track both+side mat|finish',
  ],
  causes: [
    {
      text: 'lifts not rolled, each before the next',
      remedy: 'roll each lift before the grader goes back on it',
      rule: 'roll-each-lift',
      source: bladeSpreading('tire tracks show as ridges unless each layer is rolled'),
    },
    {
      text: 'lugged tires on the finish',
      remedy: 'smooth tires for laying',
      source: bladeSpreading('smooth tires for final layout and finishing'),
    },
  ],
  now: 'Warm: roll more, rubber tires best. If the ridges stay, cut them before the next lift.',
  nextTime: 'Roll every lift; keep the roller right behind the blade.',
  examples: {
    finds: ['grader tracks come through the finish', 'two lines where the tires ran show in the finished mat'],
    not: ['rear wheels run over the mix coming off the blade', 'a ridge along the toe'],
  },
});
