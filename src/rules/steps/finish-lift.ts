import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { bladeSpreading, ufcRepair } from '../sources-craft.ts';

export default step({
  id: 'finish-lift',
  title: 'finish lift',
  because:
    'The last pass leaves the surface that traffic rides: each touch of the levers shows, and each extra pass draws the stone out.',
  sources: [commonPractice, ufcRepair('3.3, p. 10, and ch. 7, p. 40'), bladeSpreading('blade spreading')],
  text: 'Sharp angle and some down pressure, to clear loose stone; almost no adjustments; the number of passes comes from the width[[: {blade-passes} strips]]. Now bring the mix all the way to the outer edge. [[Leave {lift-loose} loose, slightly full for rolling.]] The row should give out just short of the far end: no pile, only lumps and a little fine mix over the edge to fill the drag marks.',
  also: [
    { on: { lifts: 'one' }, text: 'This is the only lift: both ends get their taper with it.' },
    {
      on: { lifts: 'even' },
      text: 'The row lies on the shoulder side now: return it to the inside first, and bring it over again so that it ends at the outer edge. Count that pass.',
    },
  ],
  craft: [
    {
      title: 'row gives out early',
      text: 'It was small or uneven: do not stretch it thin. Bring more mix, or end the lift there with a proper taper.',
    },
    {
      title: 'row gives out late',
      text: 'It was too big for the width left. Return the row to the middle and bring it over again; a small pile is worked back into the mat, never dragged away down the road.',
    },
    {
      title: 'run-out at the end',
      text: 'Lower the toe, then the heel, and let the lift fade to nothing just beyond the patch; big stone is raked out of the feather.',
    },
    { title: 'drag marks', text: 'Keep enough fine mix on the blade to fill them as you go.' },
    { title: 'hand work', text: 'Rake big stone out of feather edges and round castings; then leave it alone.' },
  ],
  checks: [
    'The lift below is rolled.',
    '[[About {min:placed-before-finish} of the mix is down before this lift, from three lifts up.]]',
    '[[{tons-left} left to place.]]',
    'Crown or bank matches the road on both sides.',
  ],
  cautions: [
    'Inside passes and turnouts swing toward traffic: both flaggers on STOP, nobody in the swing, nothing in the buffer.',
  ],
  good: 'One texture from edge to edge, a straight outer edge, and nothing left but a few lumps.',
  rules: [
    'roll-each-lift',
    'material-run-out',
    'placed-before-finish',
    'lift-max',
    'lift-min',
    'fewest-passes',
    'lay-speed',
    'flush-finish',
  ],
  named: ['finish|final|last|top+lift', 'finish|final|last+pass'],
  doneCues: [
    'only|just+one+lift blade|laid|down|spread -not -how -two',
    'one|single+lift+job|patch blade|laid|down|spread -not -how',
    'finish|final|last|top+lift down|laid|done|blade -not -how -putting',
    'finish|final|last|top+lift+in|on -not -how',
  ],
  atCues: ['on|start|lay|blade+finish|final|last|top+lift -how'],
  cues: [
    'step put|putting|lay|blade finish|final|last|top+lift',
    'how lay|blade|put finish|final|last|top+lift',
    'finish|final|last+pass how',
    'windrow give+out|run+out early|late|where|when',
  ],
});
