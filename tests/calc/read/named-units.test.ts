import { describe, expect, it } from 'vitest';
import { namedUnits } from '../../../src/calc/read/named-units.ts';
import { read } from '../../../src/calc/read/read.ts';

/** The units named in a text, each as "unit: the words that name it". */
function named(text: string): string[] {
  return namedUnits(read(text)).map(({ unit, unclear, at }) => `${unit}${unclear ? '?' : ''}: ${text.slice(...at)}`);
}

describe('units named without a number', () => {
  it.each([
    ['how many gallons', ['gal: gallons']],
    ['give it to me in mm', ['mm: mm']],
    ['gal a minute', ['gal/min: gal a minute']],
    ['Gallon a minute, please', ['gal/min: Gallon a minute']],
    ['what is that in tons an hour?', ['ton/h: tons an hour']],
    ['how many ft a minute', ['ft/min: ft a minute']],
    ['mile an hour', ['mph: mile an hour']],
    ['how many m/min', ['m/min: m/min']],
    ['in L/m2', ['L/m2: L/m2']],
    ['as kg/m3', ['kg/m3: kg/m3']],
    ['pounds per square yard per inch', ['lb/yd2/in: pounds per square yard per inch']],
    ['gallons per yard', ['gal/yd2?: gallons per yard']],
    ['tons per load, 3 gal a minute in L/min', ['ton: tons', 'L/min: L/min']],
    ['square yards, then cubic yards', ['yd2: square yards', 'yd3: cubic yards']],
  ])('%s', (text, want) => {
    expect(named(text)).toEqual(want);
  });

  it.each(['in an hour', 'a minute', 'put 2 in the middle', 'no ton-mile here', 'how many grams', 'in t/h'])(
    '%s names none',
    (text) => {
      expect(named(text)).toEqual([]);
    },
  );
});
