import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureLeast from '../quantities/spray-temperature-least.ts';
import sprayTemperatureMost from '../quantities/spray-temperature-most.ts';
import { choiceTable } from '../shapes.ts';
import { fromMemory, ufcFlexible } from '../sources-craft.ts';

export default choiceTable({
  id: 'spray-temperature',
  title: 'spraying temperature by the grade of the tack',
  because: 'Each grade is thin enough for the nozzles in its own range, and spoils or burns above it.',
  sources: [ufcFlexible('table 3-2'), fromMemory('CRS-2 as CRS-1; MC-70 120 to 225 degF')],
  by: tackGrade,
  columns: [
    { name: 'coolest', finds: sprayTemperatureLeast, unit: 'degF' },
    { name: 'hottest', finds: sprayTemperatureMost, unit: 'degF' },
  ],
  rows: {
    ss: [70, 160],
    ms: [70, 160],
    'rs-1': [70, 140],
    crs: [125, 185],
    'rc-70': [120, 200],
    'rc-250': [165, 250],
    'mc-70': [120, 225],
  },
});
