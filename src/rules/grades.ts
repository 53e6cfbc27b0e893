/** Grades of tack that are sprayed alike, as crews write them, with the dash and without. */
export const grades = {
  ss: ['ss-1', 'ss-1h', 'css-1', 'css-1h', 'ss1', 'ss1h', 'css1', 'css1h'],
  ms: ['ms-1', 'hfms-1', 'ms1', 'hfms1'],
  'rs-1': ['rs-1', 'rs1'],
  crs: ['crs-1', 'crs-2', 'crs1', 'crs2'],
  'rc-70': ['rc-70', 'rc70'],
  'rc-250': ['rc-250', 'rc250'],
  'rc-800': ['rc-800', 'rc800'],
  'mc-30': ['mc-30', 'mc30'],
  'mc-70': ['mc-70', 'mc70'],
  'mc-250': ['mc-250', 'mc250'],
  'mc-800': ['mc-800', 'mc800'],
} as const;

const { ss, ms, 'rs-1': rs, crs, ...cutbacks } = grades;

export const emulsionGrades: readonly string[] = [...ss, ...ms, ...rs, ...crs];

/** Asphalt thinned with gasoline (RC) or kerosene (MC). */
export const cutbackGrades: readonly string[] = Object.values(cutbacks).flat();

/** All of them as one place of a cue: any will do. */
export const anyGrade = [...emulsionGrades, ...cutbackGrades].join('|');
