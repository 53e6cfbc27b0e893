import { times } from '../../calc/expression.ts';
import crewSize from '../quantities/crew-size.ts';
import laborHours from '../quantities/labor-hours.ts';
import workHours from '../quantities/work-hours.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'labor-hours',
  title: 'labor hours',
  finds: laborHours,
  by: times(crewSize, workHours),
  keeps: [crewSize],
  because: 'Each is paid for every hour.',
  sources: [geometry],
  examples: [
    { given: { 'crew-size': [9, '1'], 'work-hours': [8, 'h'] }, finds: [72, 'h'], source: 'worked out by hand' },
  ],
});
