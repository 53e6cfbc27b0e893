import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'layout-kind',
  title: 'layout',
  because:
    'Each has its own signs, taper and devices; the work decides which, and the approved plan has the last word.',
  sources: [manual('chapter 6P')],
  options: [
    {
      id: 'flaggers',
      title: 'one lane closed on a two-lane road, with flaggers',
      cues: [
        'flagger',
        'two-lane',
        'alternate',
        'county+road|highway -multilane -expressway -shoulder -divided -merge -lane-drop',
      ],
    },
    {
      id: 'shoulder',
      title: 'shoulder closed',
      cues: ['shoulder close|closed|closure|shut', 'shoulder layout|plan|work'],
    },
    {
      id: 'lane-closed',
      title: 'one lane closed on a multilane road',
      cues: ['multilane', 'lane-drop', 'expressway', 'merge'],
    },
  ],
  question: {
    text: 'Which layout: flaggers on a two-lane road, a lane closed on a multilane road, or the shoulder?',
    ease: 1,
  },
});
