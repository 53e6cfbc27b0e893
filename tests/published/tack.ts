import type { Worked } from './premix.ts';

const article = 'trade article on tack coat rates';
const iowa = 'Iowa DOT, Materials I.M. T102C, volume correction of asphalt';
const twoThirds = { residue: [200 / 3, '%'] } as const;
const straight = { ...twoThirds, dilution: [100, '%'] } as const;
const half = { ...twoThirds, dilution: [50, '%'] } as const;
const asphaltAt = (degrees: number) => ({ 'tack-temperature': [degrees, 'degF'], 'tack-kind': 'asphalt' }) as const;

export const tack: readonly Worked[] = [
  {
    document: article,
    place: '0.04 residual of a two-thirds emulsion, undiluted',
    given: { ...straight, 'tack-residual': [0.04, 'gal/yd2'] },
    finds: 'tack-rate',
    printed: [0.06, 'gal/yd2'],
    rounded: 0.0005,
  },
  {
    document: article,
    place: '0.05 residual of a two-thirds emulsion, undiluted',
    given: { ...straight, 'tack-residual': [0.05, 'gal/yd2'] },
    finds: 'tack-rate',
    printed: [0.075, 'gal/yd2'],
    rounded: 0.0005,
  },
  {
    document: article,
    place: '0.06 residual of a two-thirds emulsion, undiluted',
    given: { ...straight, 'tack-residual': [0.06, 'gal/yd2'] },
    finds: 'tack-rate',
    printed: [0.09, 'gal/yd2'],
    rounded: 0.0005,
  },
  {
    document: article,
    place: '0.06 residual of a two-thirds emulsion, one to one',
    given: { ...half, 'tack-residual': [0.06, 'gal/yd2'] },
    finds: 'tack-rate',
    printed: [0.18, 'gal/yd2'],
    rounded: 0.0005,
  },
  {
    document: 'trade questions and answers on tack',
    place: 'up to 0.05 residual is up to 0.15 diluted one to one',
    given: { ...half, 'tack-residual': [0.05, 'gal/yd2'] },
    finds: 'tack-rate',
    printed: [0.15, 'gal/yd2'],
    rounded: 0.0005,
  },
  {
    document: 'UFC 3-270-01, Asphalt Maintenance and Repair, 15 March 2001',
    place: '3.3.4: 0.05 gal/yd2 in metric',
    given: { 'tack-rate': [0.05, 'gal/yd2'] },
    finds: 'tack-rate',
    printed: [0.23, 'L/m2'],
    rounded: 0.005,
  },
  {
    document: 'UFC 3-270-01, Asphalt Maintenance and Repair, 15 March 2001',
    place: '3.3.4: 0.10 gal/yd2 in metric',
    given: { 'tack-rate': [0.1, 'gal/yd2'] },
    finds: 'tack-rate',
    printed: [0.45, 'L/m2'],
    rounded: 0.005,
  },
  {
    document: 'UFC 3-250-03, Standard Practice Manual for Flexible Pavements, 15 May 2001',
    place: 'ch. 3: 0.15 gal/yd2 in metric',
    given: { 'tack-rate': [0.15, 'gal/yd2'] },
    finds: 'tack-rate',
    printed: [0.68, 'L/m2'],
    rounded: 0.005,
  },
  {
    document: 'US Army Engineer School, subcourse EN5459, edition 6',
    place: 'weight of a hot gallon: 0.9325 gal at 60 degF × 8.328 lb',
    given: { 'tack-volume': [0.9325, 'gal'], 'tack-weight': [8.328, 'lb/gal'] },
    finds: 'tack-mass',
    printed: [7.77, 'lb'],
    rounded: 0.005,
  },
  {
    document: iowa,
    place: 'column A at 0 degF',
    given: asphaltAt(0),
    finds: 'tack-volume-factor',
    printed: [1.0211, '1'],
    rounded: 0.00005,
  },
  {
    document: iowa,
    place: 'column A at 100 degF',
    given: asphaltAt(100),
    finds: 'tack-volume-factor',
    printed: [0.9861, '1'],
    rounded: 0.00005,
  },
  {
    document: iowa,
    place: 'column A at 150 degF',
    given: asphaltAt(150),
    finds: 'tack-volume-factor',
    printed: [0.9689, '1'],
    rounded: 0.00005,
  },
  {
    document: iowa,
    place: 'column A at 200 degF; the formula of the table gives 0.95192, its last figure is rounded up',
    given: asphaltAt(200),
    finds: 'tack-volume-factor',
    printed: [0.952, '1'],
    rounded: 0.0001,
  },
  ...(
    [
      ['ss', 'SS-1, SS-1h, CSS-1, CSS-1h', 70, 160],
      ['ms', 'MS-1, HFMS-1', 70, 160],
      ['rs-1', 'RS-1', 70, 140],
      ['crs', 'CRS-1', 125, 185],
      ['rc-70', 'RC-70', 120, 200],
      ['rc-250', 'RC-250', 165, 250],
    ] as const
  ).flatMap(([grade, name, least, most]) => [
    sprayed(grade, `${name}, from`, 'spray-temperature-least', least),
    sprayed(grade, `${name}, to`, 'spray-temperature-most', most),
  ]),
];

function sprayed(grade: string, name: string, finds: string, degrees: number): Worked {
  return {
    document: 'UFC 3-250-03, Standard Practice Manual for Flexible Pavements, 15 May 2001',
    place: `table 3-2, spraying temperature of ${name}`,
    given: { 'tack-grade': grade },
    finds,
    printed: [degrees, 'degF'],
    rounded: 0,
  };
}
