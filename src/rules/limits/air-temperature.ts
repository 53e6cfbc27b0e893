import temperatureTrend from '../choices/temperature-trend.ts';
import airTemperature from '../quantities/air-temperature.ts';
import { commonPractice, limit } from '../shapes.ts';

export default limit({
  id: 'air-temperature',
  title: 'warm enough for tack and mix',
  on: airTemperature,
  min: { number: 50, unit: 'degF' },
  breaks: 'caution',
  cases: [
    {
      when: [{ choice: temperatureTrend, is: ['falling'] }],
      min: { number: 60, unit: 'degF' },
      text: {
        ok: '{on} is warm enough even while it falls: {limit} and up.',
        caution:
          '{on} and falling is under {limit}, the stricter figure in use: what is laid late may not break, dry or pack.',
        cannotTell: 'Tell me how warm the air is; while it falls {limit} is wanted.',
      },
      fix: 'Stop early enough for the last of it to break, dry and be rolled, or wait for a day that warms up.',
    },
    { when: [{ choice: temperatureTrend, is: ['rising', 'steady'] }] },
  ],
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
      document: 'Specification section 02511, prime and tack',
      issuer: 'City of Montpelier, Vermont',
      place: 'surface 60 degF',
      seen: 'read',
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
    'rising|falling #temperature -mat -load -tank -residue -stone',
    '#temperature|#number climb|rising|falling|dropping cold|hot+mix',
    '#temperature @check -mix -load -truck -base -roll|rolled',
    'cold @check tack|patch|lay|mix|work -hot+mix -cold+hot -hot+cold -pile|stockpile',
    'how+cold patch|tack|lay|work',
    'min temperature',
    'what temperature patch|tack|lay|work|pave',
    'temperature patch|tack|lay|work @check',
    'degree @check',
    'warm|cold check tack|patch|lay|pave',
    '#temperature tack|patch|lay|pave check -road -surface -pavement -ground',
    'why 50|fifty degree',
    'thermometer -mix -load',
    'morning|outside|degree|weather #number tack|lay|patch|shoot|pave|work -how-many',
    '#temperature go|start',
    'what+temperature need|stop',
    'how+warm',
    'cold|warm tack|patch|lay|shoot|pave|start -better -cold+hot -hot+cold -how-many -mat -load -roll|rolled',
    '#number+sunny|cloudy|overcast|windy|outside|out|dropping|falling|rising|climb|morning -roll-down -measure',
    '#number|#temperature drop|dropping|fall|falling|rise|rising|climb still|go|lay|patch|tack|work|start|keep',
    'why cold|warm|temperature|degree|temp',
    'why temp|temperature matter',
    '#number|#temperature go|going|head|heading+up|down check|tack|lay|patch|start -lift',
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
    also: [
      { facts: { 'air-temperature': [52, 'degF'], 'temperature-trend': 'falling' }, is: 'caution' },
      { facts: { 'air-temperature': [52, 'degF'], 'temperature-trend': 'rising' }, is: 'ok' },
      { facts: { 'air-temperature': [60, 'degF'], 'temperature-trend': 'falling' }, is: 'ok' },
    ],
  },
});
