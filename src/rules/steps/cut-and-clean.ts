import trafficControl from '../choices/traffic-control-state.ts';
import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { ufcRepair } from '../sources-craft.ts';
import { oshaSilica, texasDistress } from '../sources-work.ts';

export default step({
  id: 'cut-and-clean',
  title: 'cut and clean',
  because:
    'Mix laid over a hump, loose pieces or a fat spot moves with it; a shoulder higher than the road holds water on the patch.',
  sources: [commonPractice, texasDistress, ufcRepair('3.2.2 to 3.3.4, pp. 8-10, and ch. 7, p. 39'), oshaSilica],
  text: 'Blade or mill off what stands proud: humps, shoved mix, fat spots. Dig loose and broken pieces out of the holes. Cut the ends square, so that the mix has something to end against. Bring a shoulder that is higher than the road down level, so that water gets away. Load the chunks out.',
  before: [
    {
      met: { choice: trafficControl, is: ['up'] },
      text: 'Traffic control is up.',
      unmet: 'Put traffic control up first: nobody is on the road before it.',
      rule: 'traffic-control-first',
    },
  ],
  checks: [
    'Soft or wet underneath: stop, dig it out, dry it, rebuild it in thin rolled layers, and find the water.',
    'Castings, valve boxes and loops are marked; nothing is milled over a loop.',
    'Only clean fine material stays on the roadside, and only where the agency lets it.',
  ],
  cautions: [
    'Cutting makes silica dust: water on, cab shut, nobody downwind. The blade end and the swing stay inside the closed lane.',
  ],
  good: 'Nothing loose, nothing proud, square ends, and water runs off.',
  rules: ['traffic-control-first', 'machine-inside-lane', 'waste-disposal'],
  named: ['cut', 'milled', 'trim', 'mill', 'dig loose|hole|chunk', 'square+up'],
  doneCues: ['cut swept|clean|out -how', 'hump|high gone|off|milled|blade -not', 'cut+out -not -how', 'trim'],
  cues: ['how cut|trim|clean hump|hole|spot|patch|end|edge|high', 'how clean hole', 'cut|trim|mill before patch'],
});
