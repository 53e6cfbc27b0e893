import { toBase } from '../../../calc/quantity.ts';
import { sayFigure } from '../../../calc/wording.ts';
import { placed } from '../../placed.ts';
import type { Place } from '../../reply.ts';
import { drawn } from '../../wording/drawn.en.ts';
import { ArrowBoard, Cone, Flagger, Sign, Way } from './signs.tsx';
import { Dimension, Frame, Hatch, Line, lineHeight, Text } from './strokes.tsx';
import { type Along, type ZoneShape, zoneShape } from './zone-shape.ts';

const width = 340;
/** Where things stand across the sheet. The closed side is the right one, as traffic going up sees it. */
const x = {
  figures: 62,
  dimension: 69,
  leftSigns: 86,
  left: 100,
  middle: 132,
  right: 164,
  rightSigns: 180,
  words: 196,
};
const shoulder = 18;
/** A flagger stands a little farther off than a sign, the paddle toward the road. */
const aside = 5;
const margin = { top: 16, bottom: 40 };
const leastGap = 64;
const apart = 12;

interface Drawn {
  readonly shape: ZoneShape;
  /** Height on the sheet of a place along the road. */
  readonly y: (along: number) => number;
  /** How high the words of what stands at a place are. */
  readonly room: (along: number) => number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The plan of a work zone from the places of its layout, traffic of the closed side going up. It is not to scale along the
 * road: every distance is printed. Undefined where the places are no work zone.
 */
export function ZonePlan({ places, name }: { readonly places: readonly Place[]; readonly name: string }) {
  const shape = zoneShape(places);
  if (!shape) return null;
  const sheet = laidOut(shape);
  const unit = places[0]!.unit;
  const say = (number: number): string => sayFigure(toBase(number, unit), unit, { rounding: 'up' });
  const gaps = shape.ends.slice(1).map((to, at) => [shape.ends[at]!, to] as const);
  const whole = say(shape.ends.at(-1)! - shape.ends[0]!);
  const height = sheet.bottom + margin.bottom;
  return (
    <Frame
      name={name}
      title={drawn.zone.titles[shape.kind]}
      desc={drawn.zone.desc(itemsOf(places))}
      width={width}
      height={height}
    >
      <Road sheet={sheet} />
      {gaps.map(([from, to]) => {
        const stretch = shape.along.find((each) => each.place.length !== undefined && same(each.from, from));
        const [one, other] = [sheet.y(from), sheet.y(to)];
        return (
          <g data-from={from} data-to={to}>
            <Dimension
              from={[x.dimension, one]}
              to={[x.dimension, other]}
              text={stretch?.place.lengthText ?? say(to - from)}
              at={[x.figures, (one + other) / 2]}
            />
          </g>
        );
      })}
      {shape.along.map((each) => (
        <Part each={each} sheet={sheet} />
      ))}
      <Text x={0} y={sheet.bottom + 24} lines={[drawn.zone.whole(whole)]} bold />
      <Text x={x.words} y={sheet.bottom + 24} lines={[drawn.zone.scale]} />
    </Frame>
  );
}

/** Each part with its distance in words, in order. */
export const itemsOf = (places: readonly Place[]): string[] =>
  places.map((place) => drawn.zone.item(place.what, placed(place)));

const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-5;

/** Gives every place its height: as much room as its words need, no more. */
function laidOut(shape: ZoneShape): Drawn {
  const { ends, along } = shape;
  const room = (at: number): number => {
    const post = along.find(
      (each) => each.place.length === undefined && same(each.from, at) && linesOf(each.place).length,
    );
    return post ? linesOf(post.place).length * lineHeight : 0;
  };
  const heights = new Map<number, number>();
  let y = 0;
  for (const [at, end] of ends.entries()) {
    if (at > 0) {
      const before = ends[at - 1]!;
      const stretch = along.find((each) => each.place.length !== undefined && same(each.from, before));
      const words = stretch ? linesOf(stretch.place).length * lineHeight : 0;
      y += Math.max(leastGap, words + (room(before) + room(end)) / 2 + (words > 0 ? 2 : 1) * apart);
    }
    heights.set(end, y);
  }
  const top = margin.top + room(ends.at(-1)!) / 2 + 12;
  const heightOf = (end: number): number => heights.get(ends.find((each) => same(each, end))!)!;
  return {
    shape,
    room,
    top: 0,
    y: (end) => top + y - heightOf(end),
    bottom: top + y + Math.max(room(ends[0]!) / 2, 20) + 16,
  };
}

/** The words beside a place. */
function linesOf({ part, side, at, atText, length, spacingText }: Place): string[] {
  const names = drawn.zone.names[part ?? ''] ?? [];
  if (names.length === 0) return [];
  if (length !== undefined) return [...names, ...(spacingText ? [drawn.zone.cones(spacingText)] : [])];
  if (at === 0 || atText === undefined) return [...names];
  return [...names, side === 'past' ? drawn.zone.past(atText) : drawn.zone.before(atText)];
}

function Road({ sheet }: { readonly sheet: Drawn }) {
  const { shape, bottom, top } = sheet;
  const ways = shape.kind === 'lane-closed' ? [true, true] : [false, true];
  return (
    <g class="road">
      <Line from={[x.left, top]} to={[x.left, bottom]} width={2} />
      <Line from={[x.right, top]} to={[x.right, bottom]} width={2} />
      {shape.kind === 'shoulder' && (
        <Line from={[x.right - shoulder, top]} to={[x.right - shoulder, bottom]} width={2} />
      )}
      <Line from={[lane(shape).middle, top]} to={[lane(shape).middle, bottom]} dashed />
      {ways.map((up, at) => {
        const { left, middle, right } = lane(shape);
        return (
          <Way x={at === 0 ? (left + middle) / 2 : (middle + right) / 2} y={up ? bottom - 20 : top + 20} up={up} />
        );
      })}
    </g>
  );
}

/** The lanes open to traffic when nothing is closed. */
function lane({ kind }: ZoneShape): { left: number; middle: number; right: number } {
  const right = kind === 'shoulder' ? x.right - shoulder : x.right;
  return { left: x.left, middle: (x.left + right) / 2, right };
}

/** One part: what it is on the road, and its words beside it. */
function Part({ each, sheet }: { readonly each: Along; readonly sheet: Drawn }) {
  const { place, from, to } = each;
  const lines = linesOf(place);
  if (lines.length === 0) return null;
  const [near, far] = [sheet.y(from), sheet.y(to)];
  const isPost = place.length === undefined;
  // Between the words of what stands at its two ends.
  const level = (near - sheet.room(from) / 2 + far + sheet.room(to) / 2) / 2;
  const isLeft = isPost && place.side === 'past';
  const data = { 'data-part': place.part, 'data-side': place.side, 'data-at': place.at, 'data-length': place.length };
  return (
    <g {...data}>
      {isPost ? (
        <Post part={place.part} x={isLeft ? x.leftSigns : x.rightSigns} y={near} isLeft={isLeft} />
      ) : (
        <Stretch part={place.part} near={near} far={far} shape={sheet.shape} />
      )}
      {isPost && isLeft && <Line from={[x.right + 4, near]} to={[x.words - 4, near]} width={1} />}
      <Text x={x.words} y={isPost ? near : level} lines={lines} />
    </g>
  );
}

interface PostProps {
  readonly part: string | undefined;
  readonly x: number;
  readonly y: number;
  readonly isLeft: boolean;
}

function Post({ part, x: at, y, isLeft }: PostProps) {
  if (part === 'flagger') return <Flagger x={at + (isLeft ? -aside : aside)} y={y} toRoad={isLeft ? 1 : -1} />;
  if (part === 'arrow-board') return <ArrowBoard x={at} y={y} />;
  return <Sign x={at} y={y} />;
}

interface StretchProps {
  readonly part: string | undefined;
  readonly near: number;
  readonly far: number;
  readonly shape: ZoneShape;
}

/** A stretch with its line of devices: slanting on a taper, straight along buffer and work. */
function Stretch({ part = '', near, far, shape }: StretchProps) {
  const inner = shape.kind === 'shoulder' ? x.right - shoulder : x.middle;
  const outer = x.right - 3;
  const isTaper = part.endsWith('taper');
  const [begin, end] = !isTaper ? [inner, inner] : part === 'downstream-taper' ? [inner, outer] : [outer, inner];
  const count = 5;
  const cones = Array.from({ length: count + 1 }, (_, at) => at / count);
  return (
    <>
      {part === 'work' && <Hatch left={inner + 6} right={x.right - 3} top={far} bottom={near} />}
      {part === 'work' && (
        <rect
          x={inner + 6}
          y={far}
          width={x.right - 9 - inner}
          height={near - far}
          fill="none"
          stroke="currentColor"
          stroke-width={2}
        />
      )}
      {cones.map((share) => (
        <Cone x={begin + (end - begin) * share} y={near + (far - near) * share} />
      ))}
    </>
  );
}
