import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'laying-time',
  title: 'time to lay the mix',
  dimension: 'time',
  units: { us: 'h', metric: 'h' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Tons over tons an hour, at the pace of the slowest of blade, roller and trucks.',
  sources: [geometry],
  cues: [
    'hour|minute lay|place|put|down|get|do|run #mass #output',
    'how-far|how+long lay|place|put|down|get|do|need #mass #output',
    'time lay|place|put|down|do #mass #output',
    'how-many+hour|minute lay|place|put|down #mass -roll -rolled',
    'how+long lay|place #mass -roll -rolled -temperature',
    'hour lay job|patch|it -man+hour',
  ],
  bare: false,
  asks: 'How long will it take to lay it?',
  beside: ['laying-rate', 'lay-time'],
  usedAt: ['order-and-check'],
  note: 'Laying alone: set-up, rolling the last lift and taking the signs down come on top.',
});
