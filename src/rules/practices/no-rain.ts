import weatherState from '../choices/weather-state.ts';
import { commonPractice, practice } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default practice({
  id: 'no-rain',
  title: 'dry until it is rolled',
  on: weatherState,
  because: 'Rain floats tack that has not broken, cools the mat and is shut in under it.',
  sources: [navyBasic('ch. 16: no spreading on a damp surface or of wet mix'), commonPractice],
  cues: [
    'chance rain|shower|storm start|go|lay|tack|pave|keep',
    'rain|raining|storm|drizzle @check',
    'rain|raining come|coming|forecast|due|soon lay|patch|tack|start|work',
    'rain|raining windrow|mat|mix -after',
    'wet+weather',
    'lay|roll|tack|rolled in+rain|raining',
    'why rain|raining|dry',
    'raining keep|go|finish|stop @check',
    'rain|raining|drizzle|sprinkle|storm|shower stop|keep|quit|start|go|going|lay|pave|work -last -yesterday',
    'rain|storm|shower come|coming|due|soon|forecast|hour stop|keep|start|finish|lay',
    'storm|rain keep|start|finish|haul',
  ],
  judged: {
    dry: { status: 'ok', text: 'Dry, and no rain due before it is rolled.' },
    'rain-due': {
      status: 'caution',
      text: 'Rain is on the way: tack and lay only what can be finished and rolled dry.',
    },
    raining: { status: 'stop', text: 'It is raining: no tack, no laying, no rolling.' },
  },
  cannotTell: 'Tell me whether it is dry, rain is due, or it is raining.',
  fix: 'Finish and roll what is down, keep the rest in a tight row with drains cut through it, and keep the lane closed.',
});
