import { manual } from '../manual.ts';
import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { ufcRepair } from '../sources-craft.ts';

export default step({
  id: 'survey-and-mark',
  title: 'survey and mark',
  because:
    'Tons come from the average depth and lifts from the deepest spot; a limit painted short of sound road leaves an edge that breaks.',
  sources: [commonPractice, ufcRepair('ch. 7, pp. 39-40'), manual('6N.01')],
  text: 'Find the bad spots, best after rain, when standing water shows them. Lay a string or a straightedge across, and read the depth in both wheel paths and in the middle: the average gives the tons, the deepest spot the lifts. Paint the limits square, out to where the road is sound: a foot past cracks and holes, to the old grade round a rut or dip. [[The patch is {patch-length} by {patch-width}.]] [[The deepest spot is {deepest-depth}.]]',
  checks: [
    'Nobody goes out alone: a vehicle with high-intensity lights, and a lookout who faces traffic.',
    'No straightedge in a live lane: set up for short work, or read it from the shoulder.',
    'Soft, wet or pumping spots go on another list: they are dug out, not covered.',
    'Ditch, shoulder height and edge drop are noted; so are bridges, curbs, castings, loops and pipes.',
  ],
  cautions: ['Measuring is when people get hit: protect yourselves before the first step onto the road.'],
  good: 'Every spot is painted, sized, and figured for mix before the crew moves.',
  rules: ['traffic-control-first', 'drop-off'],
  named: ['survey', 'mark|marked -line', 'paint -line', 'mark patch|spot|limit|road', 'measure patch|spot|depth|road'],
  doneCues: [
    'patch|spot paint|mark measure',
    'patch|spot|limit mark|paint -not -roller -drum -tire -scratch',
    'mark+out',
    'all+mark|paint|measure',
  ],
  cues: [
    'first+thing|step job|patch|do -lift -sign',
    'how survey',
    'how mark|measure patch|spot|limit|bad',
    'how-many|where|how depth reading',
    'measure hit',
    'what first job|patch -lift -sign -load -now',
  ],
});
