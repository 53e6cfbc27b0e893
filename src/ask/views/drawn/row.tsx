import type { Reply } from '../../reply.ts';
import { drawn } from '../../wording/drawn.en.ts';
import { figuresOf } from './figures.ts';
import { Dimension, Frame, Line, Text } from './strokes.tsx';

const width = 340;
const left = 100;
const right = 320;
const words = drawn.row;

/** The windrow in section: a peaked heap with its height and its foot, to scale. */
export function RowSection({ reply, name }: { readonly reply: Reply; readonly name: string }) {
  const figures = figuresOf(reply);
  const [height, base] = [figures.get('windrow-height'), figures.get('windrow-base')];
  if (!height || !base || height.base <= 0 || base.base <= 0) return null;
  const high = Math.min(220, ((right - left) * height.base) / base.base);
  const [top, ground] = [14, 14 + high];
  const middle = (left + right) / 2;
  return (
    <Frame name={name} title={words.title} desc={words.desc(base.text, height.text)} width={width} height={ground + 54}>
      <Line from={[left - 20, ground]} to={[right + 20, ground]} width={2} />
      <path
        d={`M${left} ${ground}L${middle} ${top}L${right} ${ground}`}
        stroke="currentColor"
        stroke-width={2}
        fill="none"
      />
      <g data-height={height.base}>
        <Dimension from={[left - 8, top]} to={[left - 8, ground]} text={height.text} at={[left - 16, top + high / 2]} />
      </g>
      <g data-base={base.base}>
        <Dimension
          from={[left, ground + 14]}
          to={[right, ground + 14]}
          text={base.text}
          at={[middle, ground + 36]}
          anchor="middle"
        />
      </g>
      <Text x={middle} y={ground - high / 3} lines={[words.row]} anchor="middle" />
    </Frame>
  );
}
