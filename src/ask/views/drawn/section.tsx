import type { Reply } from '../../reply.ts';
import { drawn } from '../../wording/drawn.en.ts';
import { figuresOf } from './figures.ts';
import { Dimension, Frame, Hatch, Line, Stipple, Text } from './strokes.tsx';

const width = 340;
const left = 104;
const right = 172;
const most = 10;
const words = drawn.section;

/** A figure with its decimal in brackets, on two lines. */
const inTwo = (text: string): string[] => text.split(/ (?=\()/);

/** The patch in section: equal lifts numbered from the bottom up, and how high the last is left before rolling. */
export function PatchSection({ reply, name }: { readonly reply: Reply; readonly name: string }) {
  const figures = figuresOf(reply);
  const [count, thickness] = [figures.get('lift-count'), figures.get('lift-thickness')];
  const [loose, depth] = [figures.get('lift-loose'), figures.get('deepest-depth') ?? figures.get('patch-depth')];
  if (!count || !thickness || !depth || count.base > most || count.base < 1) return null;
  // One lift of another depth is no section of this patch.
  if (Math.abs(count.base * thickness.base - depth.base) > 1e-6 * depth.base) return null;
  const lifts = Array.from({ length: count.base }, (_, at) => at + 1);
  const high = Math.max(46, Math.min(60, 200 / count.base));
  const above = loose ? (loose.base / thickness.base - 1) * high : 0;
  const top = (loose ? 44 : 16) + above;
  const bottom = top + high * count.base;
  const road = bottom + 34;
  return (
    <Frame
      name={name}
      title={words.title}
      desc={words.desc(count.text, thickness.text, loose?.text)}
      width={width}
      height={road + 34}
    >
      <Hatch left={left - 16} right={left} top={top} bottom={road} />
      <Hatch left={right} right={right + 16} top={top} bottom={road} />
      <Hatch left={left} right={right} top={bottom} bottom={road} />
      <Stipple left={left} right={right} top={top} bottom={bottom} />
      {lifts.map((lift) => {
        const level = bottom - (lift - 1) * high;
        return (
          <g data-lift={lift} data-thickness={thickness.base}>
            <Line from={[left, level]} to={[right, level]} width={2} />
            <Text x={right + 24} y={level - high / 2} lines={inTwo(words.lift(lift, thickness.text))} />
          </g>
        );
      })}
      <Line from={[left, top]} to={[right, top]} width={2} />
      <Line from={[left, top]} to={[left, bottom]} width={2} />
      <Line from={[right, top]} to={[right, bottom]} width={2} />
      {loose && (
        <g data-loose={loose.base}>
          <Line from={[left, top - above]} to={[right, top - above]} dashed />
          <Text x={right + 24} y={top - above - 12} lines={inTwo(words.loose(loose.text))} />
        </g>
      )}
      <g data-depth={depth.base}>
        <Dimension
          from={[left - 26, top]}
          to={[left - 26, bottom]}
          text={depth.text}
          at={[left - 34, (top + bottom) / 2]}
        />
      </g>
      <Text x={right + 24} y={bottom + 17} lines={[words.old]} />
      <Text x={0} y={road + 20} lines={[words.across]} />
    </Frame>
  );
}
