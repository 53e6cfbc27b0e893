import { larger, minus, over, plus, roundUp, times } from '../../calc/expression.ts';
import drumWidth from '../quantities/drum-width.ts';
import patchWidth from '../quantities/patch-width.ts';
import rollerLanes from '../quantities/roller-lanes.ts';
import rollerOverhang from '../quantities/roller-overhang.ts';
import rollerOverlap from '../quantities/roller-overlap.ts';
import { geometry, relation } from '../shapes.ts';
import { rollerArticle } from '../sources-craft.ts';

export default relation({
  id: 'roller-lanes',
  title: 'roller lanes across the width',
  finds: rollerLanes,
  by: larger(
    1,
    roundUp(over(minus(plus(patchWidth, times(2, rollerOverhang)), rollerOverlap), minus(drumWidth, rollerOverlap))),
  ),
  bothWays: false,
  because: 'The first lane rolls its whole width, every other one its width less the overlap.',
  sources: [rollerArticle('12 ft lane: 4 lanes of a 4.5 ft drum, 3 of 5.5 ft, 2 of 7 ft'), geometry],
  examples: [
    {
      given: {
        'patch-width': [12, 'ft'],
        'roller-overhang': [6, 'in'],
        'roller-overlap': [6, 'in'],
        'drum-width': [4.5, 'ft'],
      },
      finds: [4, '1'],
      source: 'reprinted trade article: a 4.5 ft drum takes 4',
    },
    {
      given: {
        'patch-width': [12, 'ft'],
        'roller-overhang': [6, 'in'],
        'roller-overlap': [6, 'in'],
        'drum-width': [7, 'ft'],
      },
      finds: [2, '1'],
      source: 'the same article: a 7 ft drum takes 2',
    },
  ],
});
