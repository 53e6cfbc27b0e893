import { geometry, quantity } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default quantity({
  id: 'roller-passes',
  title: 'roller trips, each lift',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because:
    'Every lane, as many times as the width is rolled. A trip is once along; crews also call once over a spot a pass.',
  sources: [geometry, navyBasic('ch. 11: pass and coverage')],
  cues: [
    'how-many roller+pass',
    'roller pass',
    'how-many pass roll|roller|drum|coverage|rolled',
    'pass roll|drum|rolled',
    'how-many trip roll|roller|rolled',
    'trip across|drum|roller|coverage -truck -haul',
    'pass drum|roller coverage',
    'pass coverage -blade -grader',
  ],
  roles: { after: ['trip', 'pass'], before: ['trip'] },
  bare: { us: '1', metric: '1' },
  asks: 'How many roller passes?',
  beside: ['roller-lanes', 'roller-coverages', 'rolling-time'],
  usedAt: ['roll-lift', 'final-roll'],
  caution: 'Belt on, look before every reverse, nobody rides along.',
});
