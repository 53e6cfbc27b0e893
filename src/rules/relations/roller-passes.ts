import { times } from '../../calc/expression.ts';
import rollerCoverages from '../quantities/roller-coverages.ts';
import rollerLanes from '../quantities/roller-lanes.ts';
import rollerPasses from '../quantities/roller-passes.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'roller-passes',
  title: 'roller trips for one lift',
  finds: rollerPasses,
  by: times(rollerLanes, rollerCoverages),
  keeps: [rollerLanes],
  because: 'Every lane as many times as the width is rolled.',
  sources: [geometry],
  examples: [
    {
      given: { 'roller-lanes': [4, '1'], 'roller-coverages': [4, '1'] },
      finds: [16, '1'],
      source: 'four lanes, four times each',
    },
  ],
});
