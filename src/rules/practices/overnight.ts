import overnightState from '../choices/overnight-state.ts';
import { commonPractice, practice } from '../shapes.ts';
import { everett } from '../sources-craft.ts';

export default practice({
  id: 'overnight',
  title: 'what may be left for the night',
  on: overnightState,
  because: 'In the dark nobody sees a row or a lip until the wheel is on it.',
  sources: [everett('SP-63, 26 March 2025, 5-04.3(12)A1: temporary wedge 20 to 1'), commonPractice],
  cues: [
    'overnight',
    'leave|left night|tonight|tomorrow|morning @check',
    'leave ?lane|open windrow|lip|pile|it night|tonight|overnight',
    'cant finish tonight|today',
    'not finish tonight|today',
    'finish tomorrow',
    'ramp|ramped end leave|till|morning|night',
    'leave till|until morning|tomorrow|monday -drop -dropoff',
    'end ramp|ramped sign|signed|rolled',
  ],
  judged: {
    closed: { status: 'ok', text: 'With the lane closed, lit and watched as the plan says, it may stay.' },
    ramped: { status: 'ok', text: 'Rolled, ends ramped 20 to 1, uneven lanes and low shoulder signed: it may stay.' },
    'row-in-lane': { status: 'stop', text: 'Never a row in an open lane.' },
    'bare-lip': { status: 'stop', text: 'Never a lip in an open lane without a ramp and a sign.' },
  },
  cannotTell: 'Tell me what would be left: a row, a lip, ramped ends, or a closed lane.',
  fix: 'Lay and roll the row or load it out, ramp the ends over paper, sign it, or keep the lane closed with lights.',
});
