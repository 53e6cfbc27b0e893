import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'merging-taper',
  title: 'lane-closure (merging) taper',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because: 'Two lanes of traffic must find one gap each before the lane ends, so this is the longest taper of all.',
  sources: [manual('Tables 6B-3 and 6B-4')],
  cues: [
    'l #length #number|#speed -gallon -tack -#volume -#rate',
    'l offset',
    'merge taper -cone -device -drum',
    'taper multilane|lane-drop -shoulder -flagger -cone -device',
    'taper lane+close|closed|closure|shut -flagger -two-lane -one-lane -shoulder -cone -device',
    'taper arrow',
  ],
  alsoCalled: ['merge taper', 'lane closure taper', 'L'],
  bare: false,
  plausible: { min: { number: 30, unit: 'ft' }, max: { number: 3000, unit: 'ft' } },
  asks: 'How long a merging taper?',
  beside: ['device-spacing-taper', 'buffer-length', 'sign-spacing-a'],
  usedAt: ['traffic-control-up'],
  caution: 'Cones do not stop cars: the approved plan and the person in charge of traffic control come first.',
});
