import seatBelt from '../choices/seat-belt.ts';
import { practice } from '../shapes.ts';
import { niosh, oshaRollover } from '../sources-craft.ts';

export default practice({
  id: 'roller-belt',
  title: 'belt on under the frame',
  on: seatBelt,
  because: 'The frame saves only who stays inside it.',
  sources: [
    oshaRollover('19 overturns with frame and no belt: 14 dead; 5 with the belt on: none'),
    niosh('belt and roll-over structure'),
  ],
  cues: ['belt @check', 'seat+belt', 'belt roller', 'why belt'],
  judged: {
    on: { status: 'ok', text: 'Belt on, frame up.' },
    off: { status: 'stop', text: 'No rolling without the belt: thrown clear is thrown under it.' },
  },
  cannotTell: 'On a roller with a frame the belt is worn, always.',
  fix: 'Buckle up before the machine moves; with the frame down or no frame, keep off edges and slopes.',
});
