import { grades } from '../grades.ts';
import { choice } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default choice({
  id: 'tack-grade',
  title: 'grade of the tack',
  because: 'The grade on the ticket tells how thick it is, and so how hot it must be to fan out of the nozzles.',
  sources: [ufcFlexible('table 3-2')],
  question: { text: 'Which grade is on the ticket?', ease: 2 },
  options: [
    {
      id: 'ss',
      title: 'SS-1, SS-1h, CSS-1 or CSS-1h',
      cues: [...grades.ss, 'slow+set'],
    },
    { id: 'ms', title: 'MS-1 or HFMS-1', cues: grades.ms },
    { id: 'rs-1', title: 'RS-1', cues: grades['rs-1'] },
    { id: 'crs', title: 'CRS-1 or CRS-2', cues: grades.crs },
    { id: 'rc-70', title: 'RC-70', cues: grades['rc-70'] },
    { id: 'rc-250', title: 'RC-250', cues: grades['rc-250'] },
    { id: 'rc-800', title: 'RC-800', cues: grades['rc-800'] },
    { id: 'mc-30', title: 'MC-30', cues: grades['mc-30'] },
    { id: 'mc-70', title: 'MC-70', cues: grades['mc-70'] },
    { id: 'mc-250', title: 'MC-250', cues: grades['mc-250'] },
    { id: 'mc-800', title: 'MC-800', cues: grades['mc-800'] },
  ],
});
