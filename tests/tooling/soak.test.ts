import { expect, test } from 'vitest';
import { soak } from '../../scripts/soak/soak.ts';

/** The short form of `npm run soak`. */
test('at saturation and beset, no answer is wrong and none is dropped; a stop finishes what was taken', {
  timeout: 120_000,
}, async () => {
  const { calm, beset, faults } = await soak({ seconds: 6, connections: 16 });
  expect(faults).toEqual([]);
  expect(calm.answered).toBeGreaterThan(50);
  expect(beset.answered).toBeGreaterThan(10);
});
