import edgeSupport from '../choices/edge-support.ts';
import { practice } from '../shapes.ts';
import { niosh, oshaRollover } from '../sources-craft.ts';

export default practice({
  id: 'roller-edge',
  title: 'roller on a firm edge only',
  on: edgeSupport,
  because:
    'Half a drum over a soft edge or a drop puts the machine past its balance, and the patch has just made the drop deeper.',
  sources: [niosh('overturns at edges'), oshaRollover('overturns with and without belt')],
  cues: [
    'roller|drum|roll|rolled edge|shoulder soft|drop|dropoff|ditch|firm @check',
    'how+close roller edge|ditch|drop',
    'roller|drum past|over|hang edge|drop @check',
    'roller near ditch|edge|drop',
    'hang|overhang drum|roller over|past edge|drop @check',
    'drum|roller stick|hang|out over|past shoulder|edge',
    'shoulder soft drum|roller|roll|rolled @check',
    'drum|roller over|past|off soft|shoulder #length',
    'soft shoulder drum|roller over|out|past|keep|close',
    'roll|rolled edge|lip soft|drop|dropoff|ditch|shoulder',
    'overhang #length solid|firm|soft|shoulder @check',
    'drum|roller hang|overhang|half over|edge',
    'roll|rolled soft+shoulder|edge',
  ],
  judged: {
    firm: { status: 'ok', text: 'Firm, level and supported: the drum may go past it a little. Belt on.' },
    soft: { status: 'stop', text: 'A soft edge gives way under the drum: stay back from it.' },
    'drop-off': { status: 'stop', text: 'No drum over a drop-off: stay back from it.' },
  },
  cannotTell: 'Tell me how the edge is: firm and level, soft, or a drop-off. Go near only what is firm.',
  fix: 'Stay back about 2 ft, bring the shoulder up first, roll the last strip from it. Belt on, frame up, low gear.',
});
