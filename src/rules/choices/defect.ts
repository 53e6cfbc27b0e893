import alligatorCracking from '../defects/alligator-cracking.ts';
import bleeding from '../defects/bleeding.ts';
import depression from '../defects/depression.ts';
import dropOff from '../defects/drop-off.ts';
import edgeBreak from '../defects/edge-break.ts';
import pothole from '../defects/pothole.ts';
import raveling from '../defects/raveling.ts';
import rutting from '../defects/rutting.ts';
import shoving from '../defects/shoving.ts';
import singleCracks from '../defects/single-cracks.ts';
import slippage from '../defects/slippage.ts';
import softBase from '../defects/soft-base.ts';
import { choice, commonPractice } from '../shapes.ts';

/** The one that decides the repair comes first: where two are named, the graver is taken. */
const defects = [
  alligatorCracking,
  softBase,
  slippage,
  shoving,
  bleeding,
  pothole,
  rutting,
  depression,
  edgeBreak,
  dropOff,
  raveling,
  singleCracks,
];

export default choice({
  id: 'defect',
  title: 'what is wrong with the road',
  because: 'Each kind of damage has its own cause, and the repair must reach the cause.',
  sources: [commonPractice],
  question: { text: 'What is wrong with the road?', ease: 1 },
  options: defects.map(({ id, title, cues }) => ({ id, title, cues })),
});
