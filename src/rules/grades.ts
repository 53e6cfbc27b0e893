/** Grades of emulsion as crews write them, with the dash and without. */
export const emulsionGrades = [
  'ss-1',
  'css-1',
  'ss-1h',
  'css-1h',
  'rs-1',
  'crs-1',
  'crs-2',
  'ss1',
  'css1',
  'ss1h',
  'css1h',
  'crs1',
  'crs2',
] as const;
