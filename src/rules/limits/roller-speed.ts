import rollerSpeed from '../quantities/roller-speed.ts';
import { limit } from '../shapes.ts';
import { armyPaving, countyRolling, navyBasic } from '../sources-craft.ts';

export default limit({
  id: 'roller-speed',
  title: 'speed of a steel roller',
  on: rollerSpeed,
  max: { number: 3, unit: 'mph' },
  breaks: 'caution',
  because: 'A fast drum shoves the mat ahead of it, stays on each spot too short to pack it, and skids when it stops.',
  sources: [navyBasic('ch. 11: steel wheel at most 3 mph'), armyPaving('lesson 3'), countyRolling('clauses E to J')],
  cues: [
    'roller|drum+at+#number -hour -cost -ton',
    'roller|drum run|go|going+#number -pass -length -hour -cost -ton',
    'roller|roll|drum check+fast|quick',
    'roller|drum go|move|travel fast|quick @check -@enough',
    'roller|roll|drum|rolled #speed @check',
    'roller|roll|rolled fast @check',
    'how-fast @check roller|roll|rolled',
    'how-fast|speed check|max|limit roller|drum|roll -#length',
    'speed roller @check',
    'why roll|roller|rolled slow',
    'steel|wheel|drum|static #speed @check',
    'steel|drum|static+wheel fast|speed',
    'roller|drum|roll #speed -how -how-many -long -what -time -minute -hour -pass -trip -coverage -#length',
  ],
  text: {
    ok: '{on} is within the {limit} of a steel roller.',
    caution: '{on} is over the {limit} of a steel roller: it shoves the mat.',
    cannotTell: 'Tell me how fast the roller goes; a steel one rolls at up to {limit}.',
  },
  fix: 'Slow down, start and stop gently, and reverse off the fresh mat.',
  examples: {
    holds: { 'roller-speed': [2.5, 'mph'] },
    boundary: { 'roller-speed': [3, 'mph'] },
    breaks: { 'roller-speed': [3.5, 'mph'] },
    cannotTell: {},
  },
});
