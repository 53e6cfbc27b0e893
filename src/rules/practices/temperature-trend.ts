import temperatureTrend from '../choices/temperature-trend.ts';
import { commonPractice, practice } from '../shapes.ts';

export default practice({
  id: 'temperature-trend',
  title: 'warming, not cooling',
  underRule: 'air-temperature',
  on: temperatureTrend,
  because: 'Tack and cold mix need the hours after they are laid; a falling temperature takes them away.',
  sources: [commonPractice],
  cues: [
    'temperature fall|drop|dropping @check -#temperature',
    'get cold|colder|cool|cooler @check patch|lay|tack',
    'frost tonight',
  ],
  judged: {
    rising: { status: 'ok', text: 'Warming up is what tack and cold mix want.' },
    steady: { status: 'ok', text: 'It holds; keep an eye on it.' },
    falling: {
      status: 'caution',
      text: 'It is cooling down: even above the figure what is laid late may not break, dry or pack.',
    },
  },
  cannotTell: 'Tell me whether it is getting warmer or colder.',
  fix: 'Stop early enough for the last of it to break, dry and be rolled.',
});
