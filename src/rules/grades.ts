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

/** Grades of cutback, likewise: asphalt thinned with gasoline (RC) or kerosene (MC). */
export const cutbackGrades = [
  'rc-70',
  'rc-250',
  'rc-800',
  'mc-30',
  'mc-70',
  'mc-250',
  'mc-800',
  'rc70',
  'rc250',
  'rc800',
  'mc30',
  'mc70',
  'mc250',
  'mc800',
] as const;
