import type { Reply } from '../../reply.ts';
import { drawn } from '../../wording/drawn.en.ts';
import { figuresOf } from './figures.ts';
import { Dimension, Frame, Line, round, Text } from './strokes.tsx';

const width = 340;
const side = 10;
const row = 30;
const most = 14;
const words = drawn.lanes;

/** Roller lanes across the patch, to scale across, each on a line of its own so that the overlap is seen: lane 1 on the low side. */
export function RollerLanes({ reply, name }: { readonly reply: Reply; readonly name: string }) {
  const figures = figuresOf(reply);
  const [lanes, patch, drum] = ['roller-lanes', 'patch-width', 'drum-width'].map((id) => figures.get(id));
  const [overlap, overhang] = [figures.get('roller-overlap'), figures.get('roller-overhang')];
  if (!lanes || !patch || !drum || !overhang || lanes.base < 1 || lanes.base > most) return null;
  const whole = patch.base + 2 * overhang.base;
  const reach = Math.max(whole, drum.base);
  const scale = (width - 2 * side) / reach;
  const count = lanes.base;
  const step = count > 1 ? (whole - drum.base) / (count - 1) : 0;
  const x = (fromLow: number): number => width - side - fromLow * scale;
  const [low, high] = [x(overhang.base), x(overhang.base + patch.base)];
  const top = 34;
  const bottom = top + count * row + 6;
  const notes = [
    words.drum(drum.text),
    ...(overlap && count > 1 ? [words.overlap(overlap.text)] : []),
    ...(overhang.base > 0 ? [words.overhang(overhang.text)] : []),
  ];
  return (
    <Frame
      name={name}
      title={words.title}
      desc={words.desc(lanes.text, patch.text, drum.text)}
      width={width}
      height={bottom + 66 + notes.length * 20}
    >
      <Text x={high} y={12} lines={[words.high]} />
      <Text x={low} y={12} lines={[words.low]} anchor="end" bold />
      <Line from={[low, 24]} to={[low, bottom]} width={2} />
      <Line from={[high, 24]} to={[high, bottom]} width={2} />
      {Array.from({ length: count }, (_, at) => {
        const [from, to] = [x(at * step), x(at * step + drum.base)];
        const level = top + at * row;
        return (
          <g data-lane={at + 1} data-from={at * step} data-to={at * step + drum.base}>
            <rect
              x={round(to)}
              y={level}
              width={round(from - to)}
              height={row - 8}
              class="paper"
              fill="#fff"
              stroke="currentColor"
              stroke-width={2}
            />
            <Text x={(from + to) / 2} y={level + (row - 8) / 2} lines={[String(at + 1)]} anchor="middle" bold />
          </g>
        );
      })}
      <g data-width={patch.base}>
        <Dimension
          from={[high, bottom + 14]}
          to={[low, bottom + 14]}
          text={patch.text}
          at={[(low + high) / 2, bottom + 34]}
          anchor="middle"
        />
      </g>
      {notes.map((note, at) => (
        <Text x={0} y={bottom + 64 + at * 20} lines={[note]} />
      ))}
    </Frame>
  );
}
