import { coolingTime, type Layer, type Mesh } from '../../src/calc/heat.ts';

/** Conductivity, heat capacity and density of dense hot mix, as in MN/RC-1998-18 (from memory). */
export const mix = { conductivity: 1.21, heatCapacity: 921, density: 2243 };

/** A hot lift in inches, degF and mph, on a road as warm as the air; it is followed down to 175 degF. */
export interface Band {
  readonly inches: number;
  readonly mix: number;
  readonly road: number;
  readonly wind: number;
}

const celsius = (f: number): number => (f - 32) / 1.8;
const stop = celsius(175);

/** Film of 7.4 + 6.39 V^0.75 and radiation at 0.95, for wind in mph and air in degC. */
export function radiating(wind: number, air: number): (surface: number) => number {
  const convected = 7.4 + 6.39 * (wind * 0.44704) ** 0.75;
  return (surface) => {
    const [a, b] = [surface + 273.15, air + 273.15];
    return convected + 0.95 * 5.670374419e-8 * (a * a + b * b) * (a + b);
  };
}

export function road({ inches, mix: hot, road: base, wind }: Band): Layer {
  const air = celsius(base);
  return { thickness: inches * 0.0254, start: celsius(hot), base: air, air, matter: mix, film: radiating(wind, air) };
}

export const minutes = (band: Band, mesh?: Mesh): number => coolingTime(road(band), stop, mesh) / 60;

/** The same equation by plain forward steps on an even mesh of 40 cells in the lift: shares no step with what is tested. */
export function explicit(band: Band): number {
  const { thickness, start, base, air, film } = road(band);
  const cells = 40;
  const dx = thickness / cells;
  const diffusivity = mix.conductivity / (mix.heatCapacity * mix.density);
  const dt = (0.4 * dx * dx) / diffusivity;
  let now = Float64Array.from({ length: 12 * cells }, (_, i) => (i < cells ? start : base));
  const mean = (): number => now.subarray(0, cells).reduce((sum, t) => sum + t, 0) / cells;
  const half = (2 * mix.conductivity) / dx;
  let top = start;
  for (let time = 0; ; time += dt) {
    const before = mean();
    for (let turn = 0; turn < 4; turn++) top = (half * now[0]! + film(top) * air) / (half + film(top));
    const next = now.slice();
    for (let i = 0; i < now.length; i++) {
      const inward = i === 0 ? half * (top - now[0]!) : (mix.conductivity / dx) * (now[i - 1]! - now[i]!);
      const outward = i === now.length - 1 ? 0 : (mix.conductivity / dx) * (now[i]! - now[i + 1]!);
      next[i]! += (dt * (inward - outward)) / (mix.heatCapacity * mix.density * dx);
    }
    now = next;
    const after = mean();
    if (after <= stop) return (time + (dt * (before - stop)) / (before - after)) / 60;
  }
}
