import workDuration from '../choices/work-duration.ts';
import { manual } from '../manual.ts';
import { practice } from '../shapes.ts';

export default practice({
  id: 'work-duration',
  title: 'how long the work stands',
  on: workDuration,
  because:
    'Devices, lights and signs go by how long the work stands at one spot and whether it sees the dark; a blade patch with its lifts takes more than an hour.',
  sources: [manual('section 6N.01')],
  cues: [
    'one|same+spot|place night|day|shift|hour',
    'two|three|several night|day|shift straight|windrow|same|one',
    'mobile+operation|work|job @check',
    'duration',
    'duration work|job|category|type',
    'short+term|long+term|intermediate work|job',
    'short+term|long+term|intermediate @check',
  ],
  judged: {
    mobile: {
      status: 'caution',
      text: 'A blade patch stands longer than mobile work: cutting and rolling lifts at one spot takes over an hour.',
    },
    'short-duration': {
      status: 'ok',
      text: 'Up to an hour at one spot is short duration. It may do with fewer devices, but no less safe for it; vehicles carry high-intensity lights.',
    },
    'short-term': {
      status: 'ok',
      text: 'Over an hour within one daylight period is short-term; most maintenance and most blade patches are.',
    },
    'intermediate-term': {
      status: 'ok',
      text: 'More than one daylight period up to three days, or over an hour at night, is intermediate-term: devices shall be retroreflective, lit, or both.',
    },
    'long-term': {
      status: 'ok',
      text: 'More than three days at one spot is long-term: devices shall be retroreflective, lit, or both.',
    },
  },
  cannotTell:
    'Up to an hour at one spot is short duration; over an hour within one daylight period is short-term; longer, up to three days, or over an hour at night, is intermediate-term; over three days is long-term; what keeps moving is mobile. Which of these is it?',
  fix: 'Set up for the longest it may stand, by your agency’s plan.',
});
