import type { Facts } from '../../src/rules/shapes.ts';

/** A bound that a text gives, and on which side of it a figure is held. */
export interface Judged {
  readonly document: string;
  readonly place: string;
  readonly rule: string;
  readonly facts: Facts;
  readonly is: 'ok' | 'caution' | 'stop';
}

const everett = 'City of Everett, Special Provisions, section 5-04.3';
const repair = 'UFC 3-270-01, Asphalt Maintenance and Repair, 15 March 2001';
const navy = 'US Navy, NAVEDTRA 14081, Equipment Operator, Basic, 1994';
const hot = (degrees: number) => ({ 'surface-temperature': [degrees, 'degF'], 'mix-kind': 'hot' }) as const;

export const bounds: readonly Judged[] = [
  {
    document: everett,
    place: '5-04.3(1) table 1: wearing courses under 0.10 ft, 55 degF',
    rule: 'surface-temperature',
    facts: hot(55),
    is: 'ok',
  },
  { document: everett, place: 'the same, a degree less', rule: 'surface-temperature', facts: hot(54), is: 'caution' },
  {
    document: navy,
    place: 'ch. 11: steel wheel at most 3 mph',
    rule: 'roller-speed',
    facts: { 'roller-speed': [3, 'mph'] },
    is: 'ok',
  },
  {
    document: navy,
    place: 'ch. 11: 3.5 mph is over it',
    rule: 'roller-speed',
    facts: { 'roller-speed': [3.5, 'mph'] },
    is: 'caution',
  },
  {
    document: repair,
    place: '3.3.4: at most 1/8 in high',
    rule: 'flush-finish',
    facts: { 'flush-height': [0.125, 'in'] },
    is: 'ok',
  },
  {
    document: repair,
    place: '3.3.4: 3/16 in is over it',
    rule: 'flush-finish',
    facts: { 'flush-height': [0.1875, 'in'] },
    is: 'caution',
  },
  {
    document: 'state DOT surface smoothness clause',
    place: 'at most 1/4 in in 10 ft across',
    rule: 'straightedge',
    facts: { 'straightedge-gap': [0.25, 'in'], 'straightedge-way': 'across' },
    is: 'ok',
  },
  {
    document: 'state DOT surface smoothness clause',
    place: 'at most 1/8 in in 10 ft along: 1/4 in is over it',
    rule: 'straightedge',
    facts: { 'straightedge-gap': [0.25, 'in'], 'straightedge-way': 'along' },
    is: 'caution',
  },
  {
    document: 'Florida DOT, Standard Specifications, section 330',
    place: 'roller strips overlap at least 6 in',
    rule: 'roller-overlap-florida',
    facts: { 'roller-overlap': [6, 'in'] },
    is: 'ok',
  },
  {
    document: 'Florida DOT, Standard Specifications, section 330',
    place: 'the same, 5 in',
    rule: 'roller-overlap-florida',
    facts: { 'roller-overlap': [5, 'in'] },
    is: 'caution',
  },
  {
    document: 'US Army SDDC Transportation Engineering Agency, Edge Drop-Off Hazards',
    place: 'repair over 3 in: 3.5 in',
    rule: 'drop-off',
    facts: { 'edge-drop': [3.5, 'in'] },
    is: 'stop',
  },
  {
    document: everett,
    place: '5-04.3(4): at most one part water to one of emulsion',
    rule: 'dilution-once',
    facts: { dilution: [50, '%'] },
    is: 'ok',
  },
  {
    document: everett,
    place: '5-04.3(4): two parts water to one of emulsion are over it',
    rule: 'dilution-once',
    facts: { dilution: [100 / 3, '%'] },
    is: 'caution',
  },
];
