import airTemperature from '../quantities/air-temperature.ts';
import { commonPractice, limit } from '../shapes.ts';

export default limit({
  id: 'air-temperature',
  title: 'warm enough for tack and mix',
  on: airTemperature,
  min: { number: 50, unit: 'degF' },
  breaks: 'caution',
  because:
    'In the cold tack does not break, cold mix does not dry, and a thin hot lift is stiff before the roller comes.',
  sources: [
    {
      document: 'UFGS 32 12 10, guide specification for tack and prime',
      issuer: 'US Department of Defense',
      place: 'air 50 degF or more',
      seen: 'memory',
    },
    {
      document: 'Homer Municipal Code 13.20.020',
      issuer: 'City of Homer, Alaska',
      place: 'dry, above 40 degF in the shade',
      seen: 'read',
    },
    commonPractice,
  ],
  cues: [
    '#temperature @check -mix -load -truck -base -roll|rolled',
    'cold @check tack|patch|lay|mix|work',
    'how+cold patch|tack|lay|work',
    'min temperature',
    'what temperature patch|tack|lay|work|pave',
    'temperature patch|tack|lay|work @check',
    'degree @check',
    'why 50|fifty degree',
  ],
  text: {
    ok: '{on} is warm enough, {limit} and up, while it is not falling.',
    caution:
      "{on} is under the {limit} that tack and cold mix want. Figures from 40 to 60 are in use: your agency's decides.",
    cannotTell: 'Tell me how warm the air is; {limit} and rising is wanted.',
  },
  fix: 'Wait for the day to warm up; below that lay only what an emergency asks for.',
  examples: {
    holds: { 'air-temperature': [65, 'degF'] },
    boundary: { 'air-temperature': [50, 'degF'] },
    breaks: { 'air-temperature': [45, 'degF'] },
    cannotTell: {},
  },
});
