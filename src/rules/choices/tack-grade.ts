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
      cues: ['ss-1', 'ss-1h', 'css-1', 'css-1h', 'ss1', 'ss1h', 'css1', 'css1h', 'slow+set'],
    },
    { id: 'ms', title: 'MS-1 or HFMS-1', cues: ['ms-1', 'hfms-1', 'ms1', 'hfms1'] },
    { id: 'rs-1', title: 'RS-1', cues: ['rs-1', 'rs1'] },
    { id: 'crs', title: 'CRS-1 or CRS-2', cues: ['crs-1', 'crs-2', 'crs1', 'crs2'] },
    { id: 'rc-70', title: 'RC-70', cues: ['rc-70', 'rc70'] },
    { id: 'rc-250', title: 'RC-250', cues: ['rc-250', 'rc250'] },
    { id: 'rc-800', title: 'RC-800', cues: ['rc-800', 'rc800'] },
    { id: 'mc-30', title: 'MC-30', cues: ['mc-30', 'mc30'] },
    { id: 'mc-70', title: 'MC-70', cues: ['mc-70', 'mc70'] },
    { id: 'mc-250', title: 'MC-250', cues: ['mc-250', 'mc250'] },
    { id: 'mc-800', title: 'MC-800', cues: ['mc-800', 'mc800'] },
  ],
});
