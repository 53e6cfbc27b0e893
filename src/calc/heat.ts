/** What a body is made of, in SI units. */
export interface Matter {
  /** W/(m K) */
  readonly conductivity: number;
  /** J/(kg K) */
  readonly heatCapacity: number;
  /** kg/m3 */
  readonly density: number;
}

/** A warm layer on a deep base of the same matter, its top open to the air. Temperatures in degC, lengths in m. */
export interface Layer {
  readonly thickness: number;
  readonly start: number;
  readonly base: number;
  readonly air: number;
  readonly matter: Matter;
  /** Heat that leaves the surface, W/(m2 K) over the air, where the surface has this temperature. */
  readonly film: (surface: number) => number;
}

/** How finely it is worked: cells in the layer, how cells below it and time steps grow, the first step in L²/a. */
export interface Mesh {
  readonly cells: number;
  readonly cellGrowth: number;
  readonly stepGrowth: number;
  readonly firstStep: number;
}

/** Fine enough: one twice as fine moves the answer by less than one per cent. */
export const mesh: Mesh = { cells: 16, cellGrowth: 1.15, stepGrowth: 1.08, firstStep: 1e-4 };

/** Base that is worked along with the layer, in layer thicknesses: heat has not come through it when the search ends. */
const depth = 40;
/** Longest time looked at, in L²/a. */
const longest = 100;

/**
 * Seconds until the mean temperature of a layer falls to `stop`. One-dimensional conduction by finite volumes, implicit in
 * time (second-order backward differences over growing steps), the surface film taken at the surface temperature ahead.
 * 0 when the layer is no warmer than `stop`; NaN when it does not get there within 100 L²/a.
 */
export function coolingTime(
  layer: Layer,
  stop: number,
  { cells, cellGrowth, stepGrowth, firstStep }: Mesh = mesh,
): number {
  if (layer.start <= stop) return 0;
  if (layer.base >= stop && layer.air >= stop) return Number.NaN;
  const { conductivity, heatCapacity, density } = layer.matter;
  const widths = widthsOf(layer.thickness, cells, cellGrowth);
  const store = widths.map((width) => width * heatCapacity * density);
  const links = widths.slice(1).map((width, i) => (2 * conductivity) / (width + widths[i]!));
  const skin = (2 * conductivity) / widths[0]!;
  const mean = (t: readonly number[]): number => t.slice(0, cells).reduce((sum, each) => sum + each, 0) / cells;

  const natural = layer.thickness ** 2 / (conductivity / (heatCapacity * density));
  let now = widths.map((_, i) => (i < cells ? layer.start : layer.base));
  let before = now;
  let surface = layer.start;
  let surfaceBefore = surface;
  let time = 0;
  let step = firstStep * natural;
  for (let growth = 0; time < longest * natural; growth = stepGrowth, step *= stepGrowth) {
    const film = layer.film(surface + growth * (surface - surfaceBefore));
    const out = (film * skin) / (film + skin);
    const next = implicitStep({ now, before, growth, step, store, links, out, air: layer.air });
    const [m0, m1] = [mean(now), mean(next)];
    if (m1 <= stop) return time + (step * (m0 - stop)) / (m0 - m1);
    surfaceBefore = surface;
    surface = (film * layer.air + skin * next[0]!) / (film + skin);
    before = now;
    now = next;
    time += step;
  }
  return Number.NaN;
}

/** Equal cells through the layer, then wider and wider ones down into the base. */
function widthsOf(thickness: number, cells: number, growth: number): number[] {
  const first = thickness / cells;
  const widths = new Array<number>(cells).fill(first);
  for (let width = first, down = 0; down < depth * thickness; width *= growth) {
    widths.push(width);
    down += width;
  }
  return widths;
}

interface Step {
  readonly now: readonly number[];
  readonly before: readonly number[];
  /** This step over the last one; 0 for the first, which has none before it. */
  readonly growth: number;
  readonly step: number;
  /** Heat each cell holds for a degree. */
  readonly store: readonly number[];
  /** Heat that passes between neighbours for a degree. */
  readonly links: readonly number[];
  /** Heat that leaves the top cell for a degree over the air. */
  readonly out: number;
  readonly air: number;
}

/** One backward step of second order for steps of unlike length: a tridiagonal system, solved by elimination. */
function implicitStep({ now, before, growth: w, step, store, links, out, air }: Step): number[] {
  const a = (1 + 2 * w) / (1 + w);
  const b = 1 + w;
  const c = w ** 2 / (1 + w);
  const upper = new Array<number>(now.length);
  const next = new Array<number>(now.length);
  for (let i = 0; i < now.length; i++) {
    const held = store[i]! / step;
    const up = i === 0 ? out : links[i - 1]!;
    const down = links[i] ?? 0;
    const from = i === 0 ? 0 : up;
    const pivot = a * held + up + down - from * (upper[i - 1] ?? 0);
    upper[i] = down / pivot;
    const right = held * (b * now[i]! - c * before[i]!) + (i === 0 ? out * air : up * next[i - 1]!);
    next[i] = right / pivot;
  }
  for (let i = now.length - 2; i >= 0; i--) next[i]! += upper[i]! * next[i + 1]!;
  return next;
}
