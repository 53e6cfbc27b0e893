import speedUnit from '../choices/speed-unit.ts';
import { sightDown, sightRow, upToGrade } from '../downgrade.ts';
import { californiaManual, manual } from '../manual.ts';
import bufferLength from '../quantities/buffer-length.ts';
import { relation } from '../shapes.ts';
import level from '../tables/stopping-sight.ts';

export default relation({
  id: 'buffer-length',
  title: 'stopping sight distance',
  finds: bufferLength,
  by: upToGrade(0, sightRow(level), sightDown),
  bothWays: false,
  when: [{ choice: speedUnit, is: ['us'] }],
  because: 'A driver who has missed the taper needs the distance it takes to see, brake and stop, and more going down.',
  sources: [manual('Table 6B-2'), californiaManual('Table 6B-2(CA), downgrades')],
  examples: [
    {
      given: { 'posted-speed': [45, 'mph'], 'table-grade': [0, '%'], 'speed-unit': 'us' },
      finds: [360, 'ft'],
      source: 'MUTCD 11th ed., Table 6B-2',
    },
    {
      given: { 'posted-speed': [42, 'mph'], 'table-grade': [0, '%'], 'speed-unit': 'us' },
      finds: [360, 'ft'],
      source: 'MUTCD 11th ed., Table 6B-2, next row up',
    },
    {
      given: { 'posted-speed': [15, 'mph'], 'table-grade': [0, '%'], 'speed-unit': 'us' },
      finds: [115, 'ft'],
      source: 'MUTCD 11th ed., Table 6B-2, its first row',
    },
    {
      given: { 'posted-speed': [55, 'mph'], 'table-grade': [6, '%'], 'speed-unit': 'us' },
      finds: [553, 'ft'],
      source: 'California MUTCD 2026, Table 6B-2(CA)',
    },
  ],
});
