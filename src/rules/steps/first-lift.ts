import trafficControl from '../choices/traffic-control-state.ts';
import weather from '../choices/weather-state.ts';
import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { bladeSpreading, ufcRepair } from '../sources-craft.ts';
import { armyGrader } from '../sources-work.ts';

export default step({
  id: 'first-lift',
  title: 'first lift',
  because: 'The first lift sets the shape: its ends and its slope are what every later lift follows.',
  sources: [commonPractice, bladeSpreading('blade spreading'), ufcRepair('ch. 7, pp. 39-40'), armyGrader],
  text: 'Straddle the row and carry it outward, from the center-line side to the shoulder, in no more passes than the width asks for[[: {blade-passes} strips]]. [[Leave {lift-loose} loose: it rolls down to {lift-thickness}.]] Low gear, throttle open[[, about {grader-speed}]]. Both ends get their taper now.',
  before: [
    {
      met: { choice: trafficControl, is: ['up'] },
      text: 'Traffic control is up.',
      unmet: 'Put traffic control up first: nobody is on the road before it.',
      rule: 'traffic-control-first',
    },
    {
      met: { choice: weather, is: ['dry'] },
      text: 'It is dry, and no rain is due before the mat is rolled.',
      unmet: 'Lay nothing on or under rain: pull the row tight, keep the lane closed, and wait.',
      rule: 'no-rain',
    },
  ],
  craft: [
    {
      title: 'blade set-up',
      text: 'Sharp angle, the toe just outside the track of the front wheel, the moldboard rolled a little forward, the edge just high enough for mix to flow under it. The trailing end clears the rear wheels.',
    },
    { title: 'down pressure', text: 'Some packs the mix under the edge and tightens the surface; too much tears it.' },
    {
      title: 'going on',
      text: 'Raise the toe a little at a time, then the heel, so that the lift starts from nothing.',
    },
    {
      title: 'coming off',
      text: 'Lower the toe some feet before the end; when about half the blade is past it, begin to lower the heel. Carry the mix just beyond the patch.',
    },
    {
      title: 'turnout',
      text: 'Past the end, wheels hard over toward the row until what is under the blade lines up with it[[, within {max:turnout-distance}]].',
    },
    {
      title: 'reading the stones',
      text: 'The height is right when, just behind the toe, the edge touches and rolls a stone now and then. Stones dragged all the time: too low. None touched: too high.',
    },
    {
      title: 'deep holes and ruts',
      text: 'Fill them first, in level layers, each rolled in the hole; do not follow the shape of the rut.',
    },
  ],
  checks: [
    'The toe holds the row: no ridge along the pick-up line.',
    'Mix stays short of the outer edge, with a wheel of room between row and edge.',
    '[[The first strip is measured before and after rolling: loose over rolled is your roll-down, taken as {roll-down} until then.]]',
  ],
  cautions: [
    'Inside passes and turnouts swing toward traffic: both flaggers on STOP, nobody in the swing, nothing in the buffer.',
  ],
  good: 'Even depth, both ends from nothing, no torn or rocky streak.',
  rules: ['lift-max', 'lift-min', 'lay-speed', 'fewest-passes', 'machine-inside-lane', 'turnout-distance'],
  named: ['first+lift', 'first+pass', 'bottom+lift', 'lay -finish -final -last -top -second -third -next -not'],
  doneCues: [
    'first|1st|bottom+lift down|laid|done|blade -not -how',
    'first|1st|bottom+lift+in|on -not -how',
    'lift down|laid|blade -not -how -next -second -third -finish -last -final -top -how-many',
  ],
  atCues: ['on|start|lay|blade+first|1st|bottom+lift -how'],
  cues: [
    'how lay|blade|spread|put first+lift',
    'how lay|blade lift|mix|patch -fast -far -many -long -thick',
    'how set blade|toe|heel',
    'blade angle|pitch|set-up lay',
    'toe heel',
    'how taper end -long -far',
    'turnout|turn+out how|where',
    'down+pressure',
  ],
});
