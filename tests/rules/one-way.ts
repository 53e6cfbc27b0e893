/**
 * Members that their relation cannot be turned round for, reviewed one by one: a count that is rounded up or a row of a
 * table has many inputs behind it. A new line here needs a reason of that kind.
 */
export const oneWay: readonly string[] = [
  'lift-count: deepest-depth',
  'lift-count: lift-max',
  'lift-count-average: lift-max',
  'lift-count-average: patch-depth',
  'lift-count-by-thickness: deepest-depth',
  'lift-count-by-thickness: lift-thickness',
  'lift-count-by-thickness-average: lift-thickness',
  'lift-count-by-thickness-average: patch-depth',
  'lift-split: lift-max',
  'lift-split: lift-thickness',
  'loads-left: tons-left',
  'loads-left: truck-payload',
  'order-loads: premix-order',
  'order-loads: truck-payload',
  'stone-size: mix-nominal-size',
  'truck-count: premix-mass',
  'truck-count: truck-payload',
];
