import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'rut-fill',
  title: 'share of its box that a rut takes',
  dimension: 'ratio',
  units: { us: '%', metric: '%' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Wheels wear a smooth bowl, a parabola of two thirds of its box; a sharp V is half of it.',
  sources: [geometry],
  bare: false,
  default: { number: 200 / 3, unit: '%', low: 50, high: 200 / 3 },
  plausible: { min: { number: 30, unit: '%' }, max: { number: 100, unit: '%' } },
});
