import { manual } from '../manual.ts';
import postedSpeed from '../quantities/posted-speed.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'cone-use',
  title: 'where the cones are used',
  because: 'Headlights and speed both ask for a taller cone.',
  sources: [manual('section 6K.03')],
  options: [
    {
      id: 'night-or-fast',
      title: 'at night, or on a freeway or other high-speed road',
      cues: ['cone night', 'cone expressway', 'cone high+speed', 'cone dark|dusk|night'],
      within: { cues: ['cone'], of: postedSpeed, min: { number: 50, unit: 'mph' } },
    },
    {
      id: 'day-and-slow',
      title: 'by day on a low-speed road',
      cues: ['cone low+speed', 'cone day|daytime|daylight residential|street|urban'],
      within: { cues: ['cone day|daytime|daylight'], of: postedSpeed, max: { number: 40, unit: 'mph' } },
    },
  ],
  question: { text: 'Are the cones used at night or on a high-speed road, or by day on a low-speed one?', ease: 1 },
});
