import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { taught } from '../sources-work.ts';

export default step({
  id: 'clean-up',
  title: 'clean up',
  because: 'Loose stone breaks windshields, a lump in the ditch plugs it, and the patch has made the shoulder lower.',
  sources: [commonPractice, taught],
  text: 'Work a little leftover back into the mat; load the rest out. Pick up lumps, sweep loose stone off the patch and off the open lane. Pull the shoulder up to the new edge. Put the line back, or its sign up.',
  checks: [
    'The drop at the edge is measured again: the patch has added its thickness.',
    'No exposed tack, no lip without a ramp or a sign, no loose stone.',
    'Chunks and tacked sweepings are hauled: nothing to ditch, drain, wetland or yard.',
    'Castings and drives are clean.',
  ],
  cautions: ['Traffic control stays up till the last man and machine are off. No fuel on tools or truck beds.'],
  good: 'A driver would not know that you were there.',
  rules: ['waste-disposal', 'drop-off', 'open-to-traffic', 'overnight'],
  named: ['clean-up', 'pick+up+lump|chunk|stone'],
  doneCues: [
    'clean-up also',
    'clean-up -not -before -how -next -when -check -what -@check',
    'all|everything pick sweep|swept -sign -cone -not',
    'tool|shovel|rake|lute load|loaded|stowed|away -not -how -before',
    'clean-up done|finished|over -not',
    'all|everything|everybody+clean|clean-up -not -before',
    'site|place|patch clean -swept -sweep -broom -blew -not -before',
    'clean-up roll|rolled|swept|patch -not -before -how',
    'all|everything pick+up -sign -cone -not',
    'lump|chunk|leftover haul|gone|load|pick -not -where -how -check -what+do',
    'shoulder pull -how -not -check -need -what+do',
  ],
  cues: ['how|what clean-up -now -next -then', 'left|leftover lump|stone what where|do', 'stone all+over lane|road'],
});
