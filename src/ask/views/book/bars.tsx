/** One bar of a plot: its name, how long it is, and its figure in words. */
export interface Bar {
  readonly name: string;
  readonly size: number;
  readonly text: string;
}

const [width, bar, gap, names] = [640, 22, 8, 180];

/** A plot of bars, each with its name before it and its figure behind it, so that it needs no scale. */
export function Bars({ title, bars }: { readonly title: string; readonly bars: readonly Bar[] }) {
  const most = Math.max(...bars.map(({ size }) => size), 0);
  if (most <= 0) return null;
  const height = bars.length * (bar + gap) + 8;
  const id = `plot-${title.toLowerCase().replaceAll(' ', '-')}`;
  return (
    <figure class="plot">
      <figcaption>{title}</figcaption>
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby={id}>
        <title id={id}>{`${title}: ${bars.map(({ name, text }) => `${name} ${text}`).join(', ')}`}</title>
        {bars.map(({ name, size, text }, i) => {
          const y = i * (bar + gap) + 4;
          const long = Math.max(1, Math.round((size / most) * (width - names - 130)));
          return (
            <g>
              <text x={names - 8} y={y + 16} font-size="14" text-anchor="end" fill="currentColor">
                {name.length > 22 ? `${name.slice(0, 21)}…` : name}
              </text>
              <rect x={names} y={y} width={long} height={bar} fill="none" stroke="currentColor" stroke-width="2" />
              <text x={names + long + 8} y={y + 16} font-size="14" fill="currentColor">
                {text}
              </text>
            </g>
          );
        })}
      </svg>
    </figure>
  );
}
