/**
 * The dimensions a figure can have, each as powers of length, mass, time, temperature and money.
 * Two dimensions may share powers (a tack rate is a volume over an area, so a length) and are still told apart by name:
 * a rate of tack can never be added to a thickness.
 */
export const dimensions = {
  count: [0, 0, 0, 0, 0],
  ratio: [0, 0, 0, 0, 0],
  angle: [0, 0, 0, 0, 0],
  run: [0, 0, 0, 0, 0],
  length: [1, 0, 0, 0, 0],
  area: [2, 0, 0, 0, 0],
  volume: [3, 0, 0, 0, 0],
  mass: [0, 1, 0, 0, 0],
  time: [0, 0, 1, 0, 0],
  temperature: [0, 0, 0, 1, 0],
  money: [0, 0, 0, 0, 1],
  density: [-3, 1, 0, 0, 0],
  spread: [-2, 1, 0, 0, 0],
  rate: [1, 0, 0, 0, 0],
  speed: [1, 0, -1, 0, 0],
  flow: [3, 0, -1, 0, 0],
  output: [0, 1, -1, 0, 0],
  'area-rate': [2, 0, -1, 0, 0],
  wage: [0, 0, -1, 0, 1],
  price: [0, -1, 0, 0, 1],
} as const satisfies Record<string, Powers>;

/** Powers of [length, mass, time, temperature, money]. */
export type Powers = readonly [number, number, number, number, number];

export type Dimension = keyof typeof dimensions;

/** True when two dimensions have the same powers, whatever their names. */
export function samePowers(a: Powers, b: Powers): boolean {
  return a.every((power, i) => Math.abs(power - b[i]!) < 1e-9);
}

/** Powers of a product: the sums. */
export function addPowers(a: Powers, b: Powers, times = 1): Powers {
  return a.map((power, i) => power + times * b[i]!) as unknown as Powers;
}
