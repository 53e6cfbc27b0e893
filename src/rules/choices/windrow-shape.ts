import { choice, geometry } from '../shapes.ts';

export default choice({
  id: 'windrow-shape',
  title: 'shape of the row',
  because: 'A dropped row is peaked or round; one that the blade has sized is flat on top.',
  sources: [geometry],
  default: 'triangle',
  options: [
    { id: 'trapezoid', title: 'flat on top', cues: ['windrow flat', 'windrow top', 'trapezoid'] },
    { id: 'parabola', title: 'rounded', cues: ['windrow round|rounded', 'parabola'] },
    { id: 'triangle', title: 'peaked', cues: ['windrow peak|peaked|triangle', 'triangle|triangular'] },
  ],
});
