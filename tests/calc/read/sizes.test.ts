import { describe, expect, it } from 'vitest';
import { figure, figures, short } from './reads.ts';

describe('groups', () => {
  it.each([
    [
      '12 x 150',
      [
        [12, undefined],
        [150, undefined],
      ],
    ],
    [
      '12x150',
      [
        [12, undefined],
        [150, undefined],
      ],
    ],
    [
      '12 by 150',
      [
        [12, undefined],
        [150, undefined],
      ],
    ],
    [
      '12*150 ft',
      [
        [12, 'ft'],
        [150, 'ft'],
      ],
    ],
    [
      '10×20 ft',
      [
        [10, 'ft'],
        [20, 'ft'],
      ],
    ],
    [
      '12ftx150ftx2in',
      [
        [12, 'ft'],
        [150, 'ft'],
        [2, 'in'],
      ],
    ],
    [
      '12-by-150-foot',
      [
        [12, 'ft'],
        [150, 'ft'],
      ],
    ],
    [
      '12x150x2"',
      [
        [12, undefined],
        [150, undefined],
        [2, 'in'],
      ],
    ],
    [
      "12'x150'x2\"",
      [
        [12, 'ft'],
        [150, 'ft'],
        [2, 'in'],
      ],
    ],
    [
      '10 x 20 x .5 ft',
      [
        [10, 'ft'],
        [20, 'ft'],
        [0.5, 'ft'],
      ],
    ],
    [
      '2 x 12 x 150 ft',
      [
        [2, undefined],
        [12, 'ft'],
        [150, 'ft'],
      ],
    ],
    [
      '18 x 24 in',
      [
        [18, 'in'],
        [24, 'in'],
      ],
    ],
    [
      '12 x 2 in',
      [
        [12, undefined],
        [2, 'in'],
      ],
    ],
    [
      '3 x 45 x 40 mm',
      [
        [3, undefined],
        [45, undefined],
        [40, 'mm'],
      ],
    ],
    [
      '12 by half a mile',
      [
        [12, undefined],
        [0.5, 'mi'],
      ],
    ],
    [
      "24' wide by half a mile",
      [
        [24, 'ft'],
        [0.5, 'mi'],
      ],
    ],
    [
      '12 pies wide por 150 ft',
      [
        [12, 'ft'],
        [150, 'ft'],
      ],
    ],
    [
      '10\' 6" x 20\' 4"',
      [
        [10.5, 'ft'],
        [20 + 4 / 12, 'ft'],
      ],
    ],
    [
      '150L x 12W x 2D',
      [
        [150, undefined],
        [12, undefined],
        [2, undefined],
      ],
    ],
    [
      'twelve by one fifty',
      [
        [12, undefined],
        [150, undefined],
      ],
    ],
  ])('%s', (text, want) => {
    const read = figures(text);
    expect(read.map((f) => [f.number, f.unit])).toEqual(want);
    expect(read.map((f) => [f.group, f.index])).toEqual(want.map((_, index) => [0, index]));
  });

  it('are told apart', () => {
    expect(figures('10x20 and 8 x 12').map((f) => [f.group, f.index])).toEqual([
      [0, 0],
      [0, 1],
      [1, 0],
      [1, 1],
    ]);
    expect(figures('3x 10x20 patches').map((f) => f.group)).toEqual([undefined, 0, 0]);
    expect(figures('3 patches 10 x 20 ft').map((f) => f.group)).toEqual([undefined, 0, 0]);
    expect(figures('5 - 10x20 patches').map((f) => f.number)).toEqual([5, 10, 20]);
  });

  it('a yard joined by x is a length, and alone unclear', () => {
    expect(figures('12 ft x 50 yd')[1]).not.toHaveProperty('unclear');
    expect(figure('50 yd').unclear).toBe('yd');
  });

  it('a fraction set off by a blank after a bare pair is a figure of its own', () => {
    expect(figures('10x20 1-1/2"').map((f) => f.number)).toEqual([10, 20, 1.5]);
    expect(figures('12 x 150 3/4"').map((f) => [f.number, f.unit])).toEqual([
      [12, undefined],
      [150, undefined],
      [0.75, 'in'],
    ]);
    expect(figures('12x150x1 1/2"').map((f) => f.number)).toEqual([12, 150, 1.5]);
  });
});

describe('feet and inches', () => {
  it.each([
    [`5'6"`, 5.5],
    ["5'6", 5.5],
    [`5' 6"`, 5.5],
    [`5'-6"`, 5.5],
    ['5 foot 6', 5.5],
    ['5 foot 6 wide', 5.5],
    ['5 feet and 6 inches', 5.5],
    [`150'6"`, 150.5],
    [`12' 6"`, 12.5],
  ])('%s is one length', (text, feet) => {
    expect(figure(text)).toMatchObject({ number: feet, unit: 'ft' });
  });

  it.each([
    [
      '12\' 1"',
      [
        [12, 'ft'],
        [1, 'in'],
      ],
    ],
    [
      '12 ft 2 in deep',
      [
        [12, 'ft'],
        [2, 'in'],
      ],
    ],
    [
      "12' 150' 2\"",
      [
        [12, 'ft'],
        [150, 'ft'],
        [2, 'in'],
      ],
    ],
    [
      "12' x 150' 2\"",
      [
        [12, 'ft'],
        [150, 'ft'],
        [2, 'in'],
      ],
    ],
    [
      '12 wide 300 ft 2 in',
      [
        [12, undefined],
        [300, 'ft'],
        [2, 'in'],
      ],
    ],
    [
      '12 ft 2',
      [
        [12, 'ft'],
        [2, undefined],
      ],
    ],
    [
      '10 foot 6 patches',
      [
        [10, 'ft'],
        [6, undefined],
      ],
    ],
  ])('%s is a size and a thickness, or a count', (text, want) => {
    expect(figures(text).map((f) => [f.number, f.unit])).toEqual(want);
  });
});

describe('the inch and the preposition', () => {
  it.each([
    ['3 in lifts', '[3 in] lifts'],
    ['at 2 in we stop', 'at [2 in] we stop'],
    ['2 in 12 ft', '[2 in] [12 ft]'],
    ['2 in 12 wide', '[2 in] [12] wide'],
    ['3 in in 2 lifts', '[3 in] in [2] lifts'],
    ['1/4 in. in 10 ft', '[0.25 in] in [10 ft]'],
    ['3 in an hour', '[3] in [1 h]'],
    ['put 2 in at 9', 'put [2] in at [9]'],
    ['2 in the middle', '[2] in the middle'],
    ['put 2 in one lift', 'put [2] in [1] lift'],
    ['1 in 48', '[1] in [48]'],
    ['24 in 180 ft', '[24] in [180 ft]'],
    ['15 ton in 180 ft', '[15 ton] in [180 ft]'],
  ])('%s', (text, want) => {
    expect(short(text)).toBe(want);
  });
});
