/** Pieces that every drawing is made of. Lines take the colour of the text; nothing needs a stylesheet. */

/** Size of the letters in a drawing, and the height of one line of them. */
export const letter = 16;
export const lineHeight = 19;

interface TextProps {
  readonly x: number;
  /** The middle of the lines. */
  readonly y: number;
  readonly lines: readonly string[];
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
}

/** Lines of text, level, about a height. */
export function Text({ x, y, lines, anchor = 'start', bold = false }: TextProps) {
  const first = y - ((lines.length - 1) * lineHeight) / 2 + letter * 0.35;
  return (
    <text
      x={round(x)}
      y={round(first)}
      text-anchor={anchor}
      font-size={letter}
      font-weight={bold ? 700 : 400}
      fill="currentColor"
    >
      {lines.map((line, at) => (
        <tspan x={round(x)} y={round(first + at * lineHeight)}>
          {line}
        </tspan>
      ))}
    </text>
  );
}

interface LineProps {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  readonly width?: number;
  readonly dashed?: boolean;
}

/** One straight line. */
export function Line({ from, to, width = 1.5, dashed = false }: LineProps) {
  return (
    <line
      x1={round(from[0])}
      y1={round(from[1])}
      x2={round(to[0])}
      y2={round(to[1])}
      stroke="currentColor"
      stroke-width={width}
      stroke-dasharray={dashed ? '10 8' : undefined}
    />
  );
}

interface DimensionProps {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  readonly text: string;
  /** Where the figure stands, and how it is anchored. */
  readonly at: readonly [x: number, y: number];
  readonly anchor?: 'start' | 'middle' | 'end';
}

/** A dimension line with ticks at its ends, and its figure level beside it. */
export function Dimension({ from, to, text, at, anchor = 'end' }: DimensionProps) {
  const upright = from[0] === to[0];
  const tick = ([x, y]: readonly [number, number]) =>
    upright ? <Line from={[x - 5, y]} to={[x + 5, y]} /> : <Line from={[x, y - 5]} to={[x, y + 5]} />;
  return (
    <g class="dimension">
      <Line from={from} to={to} width={1} />
      {tick(from)}
      {tick(to)}
      <Text x={at[0]} y={at[1]} lines={[text]} anchor={anchor} />
    </g>
  );
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Slanting lines that fill a box, so far apart. */
export function Hatch({ left, top, right, bottom, apart = 9 }: Box & { readonly apart?: number }) {
  const lines: (readonly [number, number, number, number])[] = [];
  // Each line is x + y = sum, cut off at the sides of the box; boxes side by side share their lines.
  for (let sum = Math.ceil((left + top) / apart) * apart; sum < right + bottom; sum += apart) {
    const x1 = Math.max(left, sum - bottom);
    const x2 = Math.min(right, sum - top);
    lines.push([x1, sum - x1, x2, sum - x2]);
  }
  const path = lines.map((line) => line.map(round)).map(([x1, y1, x2, y2]) => `M${x1} ${y1}L${x2} ${y2}`);
  return <path d={path.join('')} stroke="currentColor" stroke-width={1} fill="none" />;
}

/** Dots that fill a box: loose or rolled mix. */
export function Stipple({ left, top, right, bottom }: Box) {
  const dots: string[] = [];
  for (let y = top + 6, row = 0; y < bottom - 2; y += 8, row++)
    for (let x = left + (row % 2 ? 5 : 9); x < right - 2; x += 9) dots.push(`M${round(x)} ${round(y)}h1.4`);
  return <path d={dots.join('')} stroke="currentColor" stroke-width={1.4} fill="none" />;
}

/** Coordinates to a tenth: finer is not seen. */
export const round = (x: number): number => Math.round(x * 10) / 10;

interface FrameProps {
  readonly name: string;
  readonly title: string;
  readonly desc: string;
  readonly width: number;
  readonly height: number;
  readonly children: unknown;
}

/** A drawing with its words for those who do not see it. `name` sets its ids apart from those of other drawings of the page. */
export function Frame({ name, title, desc, width, height, children }: FrameProps) {
  return (
    <svg
      class="drawing"
      viewBox={`0 0 ${round(width)} ${round(height)}`}
      role="img"
      aria-labelledby={`${name}-title ${name}-desc`}
      font-family="inherit"
    >
      <title id={`${name}-title`}>{title}</title>
      <desc id={`${name}-desc`}>{desc}</desc>
      {children}
    </svg>
  );
}
