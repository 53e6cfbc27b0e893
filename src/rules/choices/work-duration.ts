import { manual } from '../manual.ts';
import workHours from '../quantities/work-hours.ts';
import { choice } from '../shapes.ts';

/** What is asked of a time at one spot: its kind. */
const asked = ['duration', 'short|long|intermediate+term', 'which|what term'];
/** Ends count as inside: the first minute past the hour. */
const overAnHour = { number: 61, unit: 'min' } as const;

export default choice({
  id: 'work-duration',
  title: 'time at one spot',
  because:
    'The longer the work stands, the more drivers meet it unready, and the more of them in the dark. A blade patch takes more than an hour: short-term by day, intermediate-term over an hour at night or left overnight, never mobile.',
  sources: [manual('section 6N.01, paragraph 2')],
  options: [
    { id: 'mobile', title: 'mobile: it moves, stopping now and then', cues: ['mobile -@check -which -what'] },
    {
      id: 'short-duration',
      title: 'short duration: up to an hour',
      cues: ['short+duration -@check -which -what'],
      within: { cues: asked, of: workHours, max: { number: 1, unit: 'h' } },
    },
    {
      id: 'short-term',
      title: 'short-term: over an hour within one day of light',
      cues: ['short+term -@check -which -what'],
      within: { cues: asked.map((cue) => `${cue} day|daytime|daylight -night`), of: workHours, min: overAnHour },
    },
    {
      id: 'intermediate-term',
      title: 'intermediate-term: more than one day of light up to three days, or over an hour at night',
      cues: [
        'two|three night|day|shift straight|windrow|spot|place -#length',
        'overnight one|same+spot|place',
        'intermediate -@check -which -what',
      ],
      within: { cues: asked.map((cue) => `${cue} night`), of: workHours, min: overAnHour },
    },
    { id: 'long-term', title: 'long-term: more than three days', cues: ['long+term -@check -which -what'] },
  ],
  question: { text: 'How long is the work at one spot, and is any of it at night?', ease: 2 },
});
