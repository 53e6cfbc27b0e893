import { over, times } from '../../calc/expression.ts';
import dilution from '../quantities/dilution.ts';
import residue from '../quantities/residue.ts';
import tackRate from '../quantities/tack-rate.ts';
import tackResidual from '../quantities/tack-residual.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'tack-rate',
  title: 'sprayed rate from the residual',
  finds: tackRate,
  by: over(tackResidual, times(residue, dilution)),
  because: 'Of what is sprayed, the residue of the original emulsion is all that stays.',
  sources: [
    {
      document: 'trade article on tack rates',
      place: '0.04 and 0.06 residual at two thirds: 0.06 and 0.09',
      seen: 'read',
    },
  ],
  examples: [
    {
      given: { 'tack-residual': [0.04, 'gal/yd2'], residue: [200 / 3, '%'], dilution: [100, '%'] },
      finds: [0.06, 'gal/yd2'],
      source: 'trade article on tack rates: 0.04 at two thirds prints 0.06',
    },
    {
      given: { 'tack-residual': [0.06, 'gal/yd2'], residue: [200 / 3, '%'], dilution: [50, '%'] },
      finds: [0.18, 'gal/yd2'],
      source: 'the same article: three times the residual at 1 to 1',
    },
  ],
});
