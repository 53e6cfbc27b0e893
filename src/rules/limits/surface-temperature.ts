import mixKind from '../choices/mix-kind.ts';
import surfaceTemperature from '../quantities/surface-temperature.ts';
import { limit } from '../shapes.ts';
import { everett } from '../sources-craft.ts';

export default limit({
  id: 'surface-temperature',
  title: 'road warm enough for a thin hot lift',
  on: surfaceTemperature,
  min: { number: 55, unit: 'degF' },
  underRule: 'air-temperature',
  breaks: 'caution',
  when: [{ choice: mixKind, is: ['hot'] }],
  because: 'The road below takes most of the heat of a thin lift.',
  sources: [
    everett('5-04.3(1) table 1: 55 degF for wearing courses under 0.10 ft'),
    { document: 'weather FAQ of a paving contractor', place: '55 degF up to 1 in', seen: 'read' },
  ],
  cues: [
    'surface|road|pavement|ground warm @check -time -minute -how+long -mat',
    'surface|road|pavement|ground check+cold|warm|cool -time -minute -how+long -mat',
    'surface|road|pavement|ground cold pave|patch|lay|tack @check -time -minute -how+long -mat',
    'surface|road|pavement|ground #temperature @check -time -minute',
    'surface|road|pavement cold @check hot -time -minute -how+long',
    'what temperature surface|road|pavement',
    'surface #number @check',
    'road|pavement|ground #number hot|cold @check',
    'surface|road|pavement|ground+#number hot|cold|go',
    'surface|road|pavement|ground+at+#number @check',
    'road|surface|pavement|ground #temperature go|start|lay',
    'road|surface|pavement|ground #temperature lay|go|start|tack|hot|pave @check -time -minute',
  ],
  text: {
    ok: '{on} on the road is enough for a hot lift of an inch: {limit} and up.',
    caution: '{on} on the road is under {limit}: an inch of hot mix is stiff before it is rolled.',
    cannotTell: 'Tell me how warm the road is and whether the mix is hot or cold; an inch of hot mix wants {limit}.',
  },
  fix: 'Wait for the sun, lay a thicker lift where the agency allows it, or use cold mix.',
  examples: {
    holds: { 'surface-temperature': [70, 'degF'], 'mix-kind': 'hot' },
    boundary: { 'surface-temperature': [55, 'degF'], 'mix-kind': 'hot' },
    breaks: { 'surface-temperature': [48, 'degF'], 'mix-kind': 'hot' },
    cannotTell: { 'surface-temperature': [48, 'degF'] },
    also: [{ facts: { 'surface-temperature': [48, 'degF'], 'mix-kind': 'cold' }, is: 'not-applicable' }],
  },
});
