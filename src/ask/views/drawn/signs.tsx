import { Line, round } from './strokes.tsx';

interface At {
  readonly x: number;
  readonly y: number;
}

/** Half the width of a sign. */
const half = 10;

/** A warning sign: a diamond. */
export function Sign({ x, y }: At) {
  const points = [
    [x, y - half],
    [x + half, y],
    [x, y + half],
    [x - half, y],
  ];
  return (
    <polygon
      points={points.map((point) => point.map(round).join(',')).join(' ')}
      fill="#ff9a00"
      stroke="currentColor"
      stroke-width={2}
    />
  );
}

/** A flagger: head and shoulders, with the eight-sided paddle held out toward the road. */
export function Flagger({ x, y, toRoad }: At & { readonly toRoad: -1 | 1 }) {
  const paddle = x + toRoad * 9;
  const sides = Array.from({ length: 8 }, (_, at) => {
    const turn = ((at + 0.5) * Math.PI) / 4;
    return `${round(paddle + 6 * Math.cos(turn))},${round(y - 7 + 6 * Math.sin(turn))}`;
  });
  return (
    <g class="flagger">
      <circle cx={round(x)} cy={round(y - 6)} r={4} fill="currentColor" />
      <path
        d={`M${round(x - 5)} ${round(y + 10)}V${round(y + 3)}A5 5 0 0 1 ${round(x + 5)} ${round(y + 3)}V${round(y + 10)}Z`}
        fill="currentColor"
      />
      <Line from={[paddle, y - 2]} to={[paddle, y + 8]} width={2} />
      <polygon points={sides.join(' ')} class="paper" fill="#fff" stroke="currentColor" stroke-width={2} />
    </g>
  );
}

/** An arrow board: a dark box with an arrow toward the lane that stays open. */
export function ArrowBoard({ x, y }: At) {
  return (
    <g class="arrow-board">
      <rect x={round(x - 12)} y={round(y - 8)} width={24} height={16} fill="currentColor" />
      <path
        d={`M${round(x + 8)} ${round(y)}H${round(x - 7)}M${round(x - 1)} ${round(y - 5)}L${round(x - 7)} ${round(y)}L${round(x - 1)} ${round(y + 5)}`}
        class="on-ink"
        stroke="#fff"
        stroke-width={2.5}
        fill="none"
      />
    </g>
  );
}

/** A cone or other device, seen from above. */
export function Cone({ x, y }: At) {
  return <circle cx={round(x)} cy={round(y)} r={3.2} fill="currentColor" class="cone" />;
}

/** The way traffic goes. */
export function Way({ x, y, up }: At & { readonly up: boolean }) {
  const to = up ? -1 : 1;
  return (
    <path
      d={`M${round(x)} ${round(y - to * 13)}V${round(y + to * 13)}M${round(x - 6)} ${round(y + to * 5)}L${round(x)} ${round(y + to * 13)}L${round(x + 6)} ${round(y + to * 5)}`}
      stroke="currentColor"
      stroke-width={2}
      fill="none"
    />
  );
}
