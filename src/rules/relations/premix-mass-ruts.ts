import { times } from '../../calc/expression.ts';
import premixMass from '../quantities/premix-mass.ts';
import rutVolume from '../quantities/rut-volume.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'premix-mass-ruts',
  title: 'tons to fill ruts',
  finds: premixMass,
  by: times(rutVolume, unitWeight),
  because: 'Only what is missing below the straightedge is filled.',
  sources: [commonPractice],
  note: 'For the ruts alone, by a parabola; a sharp V takes three quarters of it, a square trench half as much again. A skin over the whole lane comes on top.',
  examples: [
    {
      given: { 'rut-volume': [1500, 'ft3'], 'unit-weight': [110, 'lb/yd2/in'] },
      finds: [110, 'ton'],
      source: 'worked by hand: 1,500 × 12 ÷ 9 = 2,000 yd² an inch thick, × 110 ÷ 2,000',
    },
  ],
});
