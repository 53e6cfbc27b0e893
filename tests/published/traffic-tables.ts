/** Published tables of traffic control, typed from their sources, not from the records. */

/** Mile-an-hour rows of MUTCD 11th ed. (FHWA, 2023), Table 6B-2, feet; seen in two secondary copies. */
export const stoppingSight: readonly (readonly [mph: number, feet: number])[] = [
  [20, 115],
  [25, 155],
  [30, 200],
  [35, 250],
  [40, 305],
  [45, 360],
  [50, 425],
  [55, 495],
  [60, 570],
  [65, 645],
  [70, 730],
  [75, 820],
];

/** California MUTCD 2026, Table 6B-2(CA), credited there to AASHTO 2001 Exhibit 3-2: mph, then feet on 3, 6 and 9 % down. */
export const stoppingSightDown: readonly (readonly [mph: number, three: number, six: number, nine: number])[] = [
  [20, 116, 120, 126],
  [25, 158, 165, 173],
  [30, 205, 215, 227],
  [35, 257, 271, 287],
  [40, 315, 333, 354],
  [45, 378, 400, 427],
  [50, 446, 474, 507],
  [55, 520, 553, 593],
  [60, 598, 638, 686],
  [65, 682, 728, 785],
  [70, 771, 825, 891],
  [75, 866, 927, 1003],
];

/** AASHTO metric stopping sight distances, km/h and m, from memory; the formula below gives the same. */
export const stoppingSightMetric: readonly (readonly [kmh: number, metres: number])[] = [
  [20, 20],
  [30, 35],
  [40, 50],
  [50, 65],
  [60, 85],
  [70, 105],
  [80, 130],
  [90, 160],
  [100, 185],
  [110, 220],
  [120, 250],
];

/** MUTCD 11th ed. (FHWA, 2023), Table 6B-1, feet; seen in a secondary copy. */
export const signSpacing: readonly (readonly [road: string, a: number, b: number, c: number])[] = [
  ['urban-low', 100, 100, 100],
  ['urban-high', 350, 350, 350],
  ['rural', 500, 500, 500],
  ['expressway', 1000, 1500, 2640],
];

/** California MUTCD 2026, Table 6B-3(CA), for a 12 ft offset: mph, L, L/2, L/3, printed to the nearest foot. */
export const tapers: readonly (readonly [mph: number, merging: number, shifting: number, shoulder: number])[] = [
  [20, 80, 40, 27],
  [25, 125, 63, 42],
  [30, 180, 90, 60],
  [35, 245, 123, 82],
  [40, 320, 160, 107],
  [45, 540, 270, 180],
  [50, 600, 300, 200],
  [55, 660, 330, 220],
  [60, 720, 360, 240],
  [65, 780, 390, 260],
  [70, 840, 420, 280],
  [75, 900, 450, 300],
];

/**
 * Replacement chart to the guide for law enforcement in work zones (ATSSA under an FHWA grant): mph, spacing of devices on
 * the taper and on the tangent, buffer, all feet. Its rows run from 25 to 75 mph; the ones here were read out.
 */
export const deviceSpacing: readonly (readonly [mph: number, taper: number, tangent: number])[] = [
  [25, 25, 50],
  [45, 45, 90],
  [55, 55, 110],
  [75, 75, 150],
];
