import { expect, test } from 'vitest';
import { lineOf } from '../../src/rules/line-of.ts';

const file = `{
  "name": "A county",
  "defaults": { "unit-weight": { "number": 112,
    "unit": "tons" } },
  "tables": {
    "sign-spacing": [
      { "road-type": "rural", "a": 600, "unit": "ft" },
      { "road-type": "urban-low",
        "a": -1 }
    ]
  }
}`;

test.each([
  ['', 1],
  ['name', 2],
  ['defaults', 3],
  ['defaults.unit-weight.number', 3],
  ['defaults.unit-weight.unit', 4],
  ['tables.sign-spacing', 6],
  ['tables.sign-spacing[0].a', 7],
  ['tables.sign-spacing[1].road-type', 8],
  ['tables.sign-spacing[1].a', 9],
  // What is not there is told by what is round it.
  ['tables.sign-spacing[1].b', 8],
  ['source', 1],
])('%s is on line %i', (place, line) => {
  expect(lineOf(file, place)).toBe(line);
});
