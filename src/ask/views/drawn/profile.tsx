import { toBase } from '../../../calc/quantity.ts';
import type { Unit } from '../../../calc/units.ts';
import { sayFigure } from '../../../calc/wording.ts';
import type { Reply } from '../../reply.ts';
import type { Survey } from '../../survey/shape.ts';
import { drawn } from '../../wording/drawn.en.ts';
import { Dimension, Frame, Line, letter, round, Text } from './strokes.tsx';

const width = 340;
const left = 66;
const right = 320;
const top = 34;
const high = 110;
const words = drawn.profile;
/** Width that a letter may take, so that labels in a row stay apart. */
const letterWidth = letter * 0.62;

/** One place of the profile: where it is, what its depth is, and how it is named. */
interface Spot {
  readonly at: number;
  readonly deepest: number;
  readonly average: number;
  readonly label: string;
}

/** The depths that were read, hanging from the level of the finished mat: along the road, or across it where one section was read. */
export function DepthProfile({ reply, name }: { readonly reply: Reply; readonly name: string }) {
  const { survey } = reply;
  const spots = survey ? spotsOf(survey) : [];
  if (!survey || spots.length < 2) return null;
  const { units, deepest, fill, lift } = survey;
  const along = survey.stations.length > 1;
  const [first, last] = [spots[0]!, spots.at(-1)!];
  const most = deepest.depth;
  if (most <= 0 || last.at <= first.at) return null;
  const x = (at: number) => left + ((at - first.at) / (last.at - first.at)) * (right - left);
  const y = (depth: number) => top + (Math.max(0, depth) / most) * high;
  const path = (of: (spot: Spot) => number) =>
    spots.map((spot) => `${round(x(spot.at))} ${round(y(of(spot)))}`).join('L');
  const bottom = path((spot) => spot.deepest);
  const averages = along && spots.some((spot) => spot.average !== spot.deepest);
  const level = fill.length > 0 ? lift.most * lift.overAll : undefined;
  const legend = [
    ...(averages ? [words.deepest, words.average] : []),
    ...(level === undefined ? [] : [words.level(say(level, units.depth))]),
  ];
  const low = top + high + 30;
  return (
    <Frame
      name={name}
      title={along ? words.along : words.across}
      desc={words.desc(spots.map((spot) => [spot.label, say(spot.deepest, units.depth)]))}
      width={width}
      height={low + legend.length * 22 + 20}
    >
      <path d={`M${x(first.at)} ${top}L${bottom}L${x(last.at)} ${top}Z`} fill="currentColor" fill-opacity={0.12} />
      {spots.map((spot) => (
        <g data-at={spot.at} data-deepest={spot.deepest}>
          <Line from={[x(spot.at), top]} to={[x(spot.at), y(spot.deepest)]} width={1} />
        </g>
      ))}
      <Line from={[left, top]} to={[right, top]} width={2.5} />
      <path d={`M${bottom}`} stroke="currentColor" stroke-width={2.5} stroke-linejoin="round" fill="none" />
      {averages && (
        <path
          d={`M${path((spot) => spot.average)}`}
          stroke="currentColor"
          stroke-width={1.5}
          stroke-dasharray="7 5"
          fill="none"
        />
      )}
      {level !== undefined && (
        <path
          d={`M${left} ${round(y(level))}H${right}`}
          stroke="currentColor"
          stroke-width={2}
          stroke-dasharray="2 4"
          fill="none"
        />
      )}
      <Dimension
        from={[left - 14, top]}
        to={[left - 14, top + high]}
        text={say(most, units.depth)}
        at={[left - 22, top + high / 2]}
      />
      {labelled(spots, deepest, x).map(({ spot, anchor }) => (
        <>
          <Text x={x(spot.at)} y={14} lines={[spot.label]} anchor={anchor} />
          <Text
            x={x(spot.at)}
            y={top + high + 15}
            lines={[say(spot.deepest, units.depth)]}
            anchor={anchor}
            bold={spot.deepest === most}
          />
        </>
      ))}
      {legend.map((text, at) => (
        <>
          <path
            d={`M0 ${low + 12 + at * 22}h36`}
            stroke="currentColor"
            stroke-width={text === words.deepest ? 2.5 : text === words.average ? 1.5 : 2}
            stroke-dasharray={text === words.deepest ? undefined : text === words.average ? '7 5' : '2 4'}
            fill="none"
          />
          <Text x={46} y={low + 12 + at * 22} lines={[text]} />
        </>
      ))}
      <Text x={0} y={low + 10 + legend.length * 22} lines={[words.scale]} />
    </Frame>
  );
}

const say = (number: number, unit: Unit): string => sayFigure(toBase(number, unit), unit, { given: true, plain: true });

/** Stations along the road; the readings of a single station, by how far they are from the left edge. */
function spotsOf({ stations, units }: Survey): Spot[] {
  const [only, ...others] = stations;
  if (only && others.length === 0)
    return only.offsets.map((at, i) => {
      const depth = only.readings[i] ?? 0;
      return { at, deepest: depth, average: depth, label: say(at, units.across) };
    });
  return stations.map(({ at, deepest, average, label }) => ({ at, deepest, average, label }));
}

interface Labelled {
  readonly spot: Spot;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** The spots that are named: the deepest, the first and the last, and of the others those with room beside these. */
function labelled(spots: readonly Spot[], deepest: Survey['deepest'], x: (at: number) => number): Labelled[] {
  const [first, last] = [spots[0]!, spots.at(-1)!];
  const lowest = spots.find((spot) => spot.deepest === deepest.depth) ?? first;
  const named: (Labelled & { readonly from: number; readonly to: number })[] = [];
  for (const spot of new Set([lowest, first, last, ...spots])) {
    const anchor = spot === first ? 'start' : spot === last ? 'end' : 'middle';
    const long = Math.max(spot.label.length, 6) * letterWidth;
    const from = x(spot.at) - (anchor === 'start' ? 0 : anchor === 'end' ? long : long / 2);
    if (named.every((other) => from > other.to + 6 || from + long < other.from - 6))
      named.push({ spot, anchor, from, to: from + long });
  }
  return named;
}
