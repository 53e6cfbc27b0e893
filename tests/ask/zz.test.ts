import { test } from 'vitest';
import { faults } from '../../src/rules/index.generated.ts';
import { goals, scored } from './work.ts';
test('x', () => {
  let bad = 0, n = 0;
  for (const f of faults) {
    for (const q of f.examples.finds) { n++; const g = goals(q); if (g[0] !== `fault/${f.id}`) { bad++; console.log('MISS', f.id, '|', q, '|', scored(q).slice(0, 4).join(' ; ')); } }
    for (const q of f.examples.not) { n++; const g = goals(q); if (g[0] === `fault/${f.id}`) { bad++; console.log('WRONG', f.id, '|', q, '|', scored(q).slice(0, 4).join(' ; ')); } }
  }
  console.log('bad', bad, 'of', n);
  for (const q of ['tack is down and it broke, now what?','what do we do before we shoot tack','give me the whole checklist for a 3 inch patch','grader is bouncing and leaving ripples across the mat','edge of the mat looks scalloped, in and out all along','alligator cracking and the base pumps water, blade patch it?','cut and swept, now what','we tacked it and its still brown','tack is down whats next','what comes after rolling','did we miss anything','checklist for start of day','mat is tearing behind the blade','its shoving under the roller','fine cracks after rolling','rock pocket on the edge','patch is bleeding','fat spot','wont stick to old road','edges raveling','looks open/dry','roller marks wont come out','washboard in the patch','patch sitting high','bump at the end','alligator cracking in wheelpath which fix','1" rut deep patch or blade patch','shoving at stop sign','big pothole 6" deep','edge broke off','is this a blade patch job','how do I sweep','done','next','2 wheel path ruts 3 ft wide 1 in deep 500 ft long, tons to fill','3 inch deep hole, how many lifts?', "we're on the second lift, what next", 'second lift is laid', 'how do I set the toe', 'what should the blade angle be for laying','is a half inch lift ok with 3/4 stone','how many tons for 300 x 12 ft at 2 in','we rolled from the center line down to the shoulder, good?','can we roll both lifts together','how many men do i need for a blade patch'])
    console.log(q, '=>', scored(q).slice(0, 3).join(' ; '));
});
