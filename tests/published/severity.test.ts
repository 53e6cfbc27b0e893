import { expect, test } from 'vitest';
import type { Unit } from '../../src/calc/units.ts';
import { severityOf } from '../../src/rules/severity.ts';
import { work } from '../../src/rules/work.ts';
import { solved } from '../rules/facts.ts';

const army = 'TM 5-623, Pavement Maintenance Management, November 1982, appendix B';
const airfield = 'UFC 3-270-06, table 15.1';

/** Classes as printed: document, defect, the figure, the class. */
const printed: readonly (readonly [string, string, string, readonly [number, Unit], string])[] = [
  [`${airfield}, rutting`, 'rutting', 'rut-depth', [0.3, 'in'], 'low'],
  [`${airfield}, rutting`, 'rutting', 'rut-depth', [0.75, 'in'], 'moderate'],
  [`${airfield}, rutting`, 'rutting', 'rut-depth', [1.2, 'in'], 'high'],
  [`${army}, rutting: 1/4 to 1/2 in`, 'rutting', 'rut-depth', [0.4, 'in'], 'low'],
  [`${army}, rutting: over 1/2 to 1 in`, 'rutting', 'rut-depth', [0.6, 'in'], 'moderate'],
  [`${army}, rutting: over 1 in`, 'rutting', 'rut-depth', [1.1, 'in'], 'high'],
  [`${army}, depression: 1 to 2 in`, 'depression', 'deepest-depth', [1.5, 'in'], 'moderate'],
  [`${army}, depression: over 2 in`, 'depression', 'deepest-depth', [2.5, 'in'], 'high'],
  [`${army}, p. B-14, drop-off: over 2 to 4 in`, 'drop-off', 'edge-drop', [3, 'in'], 'moderate'],
  [`${army}, p. B-14, drop-off: over 4 in`, 'drop-off', 'edge-drop', [5, 'in'], 'high'],
];

test.each(printed)('%s: %s, %s of %j is %s', (_, defect, quantity, figure, level) => {
  const found = severityOf(work.defects.get(defect)!, solved({ [quantity]: figure }));
  expect(found.find(({ scheme }) => scheme === 'PCI')?.level).toBe(level);
});
