import speedUnit from '../choices/speed-unit.ts';
import { sightDown, sightRow, upToGrade } from '../downgrade.ts';
import bufferLength from '../quantities/buffer-length.ts';
import { relation } from '../shapes.ts';
import metric from '../tables/stopping-sight-metric.ts';

export default relation({
  id: 'buffer-length-metric',
  title: 'stopping sight distance, metric',
  finds: bufferLength,
  by: upToGrade(0, sightRow(metric), sightDown),
  bothWays: false,
  when: [{ choice: speedUnit, is: ['metric'] }],
  because: 'The same rule in meters; the downgrade table is printed in feet only and is read by the speed converted.',
  sources: metric.sources,
  examples: [
    {
      given: { 'posted-speed': [80, 'km/h'], 'table-grade': [0, '%'], 'speed-unit': 'metric' },
      finds: [130, 'm'],
      source: 'AASHTO metric table (from memory), and its formula rounded up to 5 m',
    },
    {
      given: { 'posted-speed': [85, 'km/h'], 'table-grade': [0, '%'], 'speed-unit': 'metric' },
      finds: [160, 'm'],
      source: 'the same, next row up',
    },
  ],
});
