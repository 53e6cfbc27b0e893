import tackState from '../choices/tack-state.ts';
import trafficControl from '../choices/traffic-control-state.ts';
import weather from '../choices/weather-state.ts';
import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { ufcFlexible } from '../sources-craft.ts';
import { osha } from '../sources-work.ts';

export default step({
  id: 'spread-premix',
  title: 'dump the mix',
  because: 'Where the mix is dumped decides what the blade has to work with: ends that start short stay short.',
  sources: [commonPractice, ufcFlexible('ch. 3, tack coats'), osha('601(b)(4), backing')],
  text: 'The first truck dumps where the grader will begin. Spread the loads out in a line[[, {end-spread} past the tack at each end|, a little past the tack at each end]], so that the ends never starve. [[One load goes {load-length} at the full depth.]] [[Loads in all: {truck-count}.]]',
  before: [
    {
      met: { choice: tackState, is: ['broken'] },
      text: 'The tack has broken: black and tacky, not brown.',
      unmet:
        'Keep the mix and the trucks off until the tack has broken and is clean: brown means wait; dusty or driven on means sweep and coat it lightly again; rained on means dry it and coat it again.',
      rule: 'tack-set',
    },
    {
      met: { choice: trafficControl, is: ['up'] },
      text: 'Traffic control is up.',
      unmet: 'Put traffic control up first: nobody is on the road before it.',
      rule: 'traffic-control-first',
    },
    {
      met: { choice: weather, is: ['dry'] },
      text: 'It is dry, and no rain is due before the mat is rolled.',
      unmet: 'Dump no more than you can lay and roll while it stays dry.',
      rule: 'no-rain',
    },
  ],
  checks: [
    'One spotter, one set of signals: lost sight, the truck stops.',
    'Look up for wires before the bed goes up; bed down before the truck moves.',
    'Read every ticket: mix, tons, and the heat of a hot load.',
    'Cold crusts and lumps from the tailgate go back on the truck.',
  ],
  cautions: ['Nobody stands between truck and blade, at a tailgate, or behind anything that backs.'],
  good: 'An even line of mix, more than the tack at both ends, nothing over the shoulder.',
  rules: ['tack-set', 'end-spread', 'backing-spotter', 'payload', 'no-rain', 'air-temperature'],
  named: ['dump|tailgate|unload', 'spread+mix', 'put+mix+down'],
  doneCues: [
    'mix|load|truck dump|unload|empty -not -how -how-many -before -gross -tare',
    'mix+down|out -not -how-many',
    'mix ground -not',
    'dump -not -how -where -before',
    'mix+road|tack on -not -how-many -before -than+mix',
    'load|truck down|empty|gone -late -how-many -break|broke -gross -tare',
  ],
  cues: [
    'how|where dump|tailgate|unload -far -apart -often -spacing',
    'how spread mix',
    'where first truck|load',
    'who back truck',
    'spotter truck',
  ],
});
