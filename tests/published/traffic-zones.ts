import type { Facts } from '../../src/rules/shapes.ts';
import type { TrafficCheck } from './traffic-checks.ts';

const us = { 'speed-unit': 'us' } as const;
const parts = 'parts of MUTCD 11th ed., Tables 6B-1 to 6B-3, added up';

/** Two lanes, flaggers: the tapers are 100 ft unless another length is given. */
export const flaggers = (road: string, mph: number, patch: number, taper = 100): Facts => ({
  ...us,
  'layout-kind': 'flaggers',
  'road-type': road,
  'posted-speed': [mph, 'mph'],
  'patch-length': [patch, 'ft'],
  'flagger-taper': [taper, 'ft'],
  'downstream-taper': [taper, 'ft'],
});
/** One lane of a multilane road closed, 12 ft wide, with a downstream taper of 100 ft. */
export const closure = (road: string, mph: number, work: number): Facts => ({
  ...us,
  'layout-kind': 'lane-closed',
  'road-type': road,
  'posted-speed': [mph, 'mph'],
  offset: [12, 'ft'],
  'patch-length': [work, 'ft'],
  'downstream-taper': [100, 'ft'],
});

/** Whole zones: nobody prints such sums, so these guard against change and prove nothing. */
export const zoneChecks: readonly TrafficCheck[] = [
  {
    what: 'flaggers, rural 45 mph, 400 ft',
    facts: flaggers('rural', 45, 400),
    finds: ['zone-length', 3960, 'ft'],
    source: parts,
    ours: true,
  },
  {
    what: 'the same, flagger to flagger',
    facts: flaggers('rural', 45, 400),
    finds: ['one-lane-length', 960, 'ft'],
    source: parts,
    ours: true,
  },
  {
    what: 'the same, with room to turn',
    facts: flaggers('rural', 45, 400),
    finds: ['zone-length-turning', 4060, 'ft'],
    source: `${parts}, 50 ft past each end`,
    ours: true,
  },
  {
    what: 'flaggers, rural 55 mph, 1,000 ft',
    facts: flaggers('rural', 55, 1000),
    finds: ['zone-length', 4695, 'ft'],
    source: parts,
    ours: true,
  },
  {
    what: 'flaggers, urban low speed 25 mph, 60 ft, tapers of 50 ft',
    facts: flaggers('urban-low', 25, 60, 50),
    finds: ['zone-length', 915, 'ft'],
    source: parts,
    ours: true,
  },
  {
    what: 'flaggers, urban high speed 45 mph, 400 ft',
    facts: flaggers('urban-high', 45, 400),
    finds: ['zone-length', 3060, 'ft'],
    source: parts,
    ours: true,
  },
  {
    what: 'lane closed, rural 55 mph, 1,000 ft',
    facts: closure('rural', 55, 1000),
    finds: ['closure-length', 3755, 'ft'],
    source: parts,
    ours: true,
  },
  {
    what: 'lane closed, freeway 65 mph, 1,500 ft',
    facts: closure('expressway', 65, 1500),
    finds: ['closure-length', 8165, 'ft'],
    source: parts,
    ours: true,
  },
  {
    what: 'queue of 200 an hour held 5 minutes',
    facts: { 'traffic-volume': [200, '1'], 'stop-time': [5, 'min'] },
    finds: ['queue-length', 416.67, 'ft'],
    as: 2,
    source: '200 × 5 ÷ 60 × 25 ft',
    ours: true,
  },
];
