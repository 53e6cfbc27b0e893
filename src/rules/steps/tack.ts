import trafficControl from '../choices/traffic-control-state.ts';
import weather from '../choices/weather-state.ts';
import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { everett, ufcRepair } from '../sources-craft.ts';

export default step({
  id: 'tack',
  title: 'tack',
  because: 'A thin film glues the patch down; a heavy one lets it slide, and a bare spot lets it peel.',
  sources: [ufcRepair('3.3.4, pp. 9-10'), everett('(4), tack coat'), commonPractice],
  text: 'Spray one thin even film over the whole marked area, and as far out as the finished feather will reach[[: {tack-volume} at {tack-rate}]]. Tack only what you will cover this shift. Keep everything off it until it has broken: brown to black, tacky to a glove.',
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
      unmet: 'Do not spray with rain on it or on the way: it washes off before it breaks.',
      rule: 'no-rain',
    },
  ],
  checks: [
    'Swept, clean and dry.',
    'No streak, no puddle: bar height, nozzle angle and pressure even; the cut-off at the ends sharp.',
    'Cut faces and joints get their coat by hand.',
    'Inlets and drains covered.',
  ],
  cautions: [
    'Hot and slick: face shield, gloves and sleeves at the wand, no flame, traffic kept off. A cutback is sprayed above the heat at which it flashes.',
  ],
  good: 'Old stone still shows through an even brown film, edge to edge.',
  rules: ['tack-clean-dry', 'tack-rate', 'air-temperature', 'no-rain'],
  named: ['tack', 'shoot|spray', 'sprayed|shot'],
  doneCues: [
    'tack+down -not -how-many',
    'tack on -not -how-many -before -rain -rate -gallon -temperature -residual',
    'tack sprayed|shot|laid|applied -rate -not -how-many -before -rain -gallon -coat -waste -#volume -#rate -residual',
    "tack broke|broken|set|black|brown|tacky -before -hasn't -isn't -ain't -didn't -wont -won't",
    'swept tack -to+tack -ready -before -how -check -need',
    'we|i+tack -check -need -before -how -when',
  ],
  cues: [
    'checklist tack|spray|shoot|distributor',
    'how tack|shoot|spray -fast -far -long -wide',
    'how put tack',
    'what tack step',
  ],
});
