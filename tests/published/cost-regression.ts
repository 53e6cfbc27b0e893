import type { Regression } from './premix-regression.ts';

const released = 'West Virginia Division of Highways, release of March 2021 (inputs printed)';
const crew = {
  'crew-size': [9, '1'],
  'work-hours': [8, 'h'],
  'labor-rate': [38, 'USD/h'],
  'equipment-rate': [465, 'USD/h'],
  'premix-mass': [80, 'ton'],
  'material-price': [85, 'USD/ton'],
  'tack-cost': [240, 'USD'],
} as const;
const placed = (dollars: number, tons: number) =>
  ({ 'job-cost': [dollars, 'USD'], 'premix-mass': [tons, 'ton'] }) as const;

/** Worked out apart from this project; the crew's rates are made up. */
export const costRegressions: readonly Regression[] = [
  {
    what: `${released}: the State`,
    given: placed(988_214, 3769),
    finds: 'cost-per-ton',
    worked: [262.2, 'USD/ton'],
    within: 0.01,
  },
  {
    what: `${released}: district 7`,
    given: placed(49_070, 258.09),
    finds: 'cost-per-ton',
    worked: [190.13, 'USD/ton'],
    within: 0.01,
  },
  {
    what: `${released}: district 9`,
    given: placed(137_257, 441.5),
    finds: 'cost-per-ton',
    worked: [310.89, 'USD/ton'],
    within: 0.01,
  },
  { what: '9 × 8 × 38 + 8 × 465 + 80 × 85 + 240', given: crew, finds: 'job-cost', worked: [13_496, 'USD'], within: 0 },
  { what: 'the same over 80 tons', given: crew, finds: 'cost-per-ton', worked: [168.7, 'USD/ton'], within: 0.001 },
  { what: '9 people for 8 hours', given: crew, finds: 'labor-hours', worked: [72, 'h'], within: 1e-9 },
];
