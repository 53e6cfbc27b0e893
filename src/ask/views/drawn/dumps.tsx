import { toBase } from '../../../calc/quantity.ts';
import { sayFigure } from '../../../calc/wording.ts';
import { placed } from '../../placed.ts';
import type { Place } from '../../reply.ts';
import { drawn } from '../../wording/drawn.en.ts';
import { Dimension, Frame, Line, round, Text } from './strokes.tsx';

const width = 340;
const x = { figures: 62, dimension: 69, left: 90, row: 150, right: 170, words: 186 };
const gap = 56;
/** More than these are one like another: the first few and the last are drawn. */
const most = 8;
const words = drawn.dumps;

/** The patch from above with the points where loads are dumped, the blade going up. Not to scale along the road. */
export function DumpPlan({ places, name }: { readonly places: readonly Place[]; readonly name: string }) {
  const points = places.filter(({ part }) => part === 'dump' || part === 'patch-end');
  if (points.length < 2) return null;
  const shown = points.length > most ? [...points.slice(0, most - 2), ...points.slice(-2)] : points;
  const bottom = 24 + (shown.length - 1) * gap;
  const y = (at: number): number => bottom - at * gap;
  const height = bottom + 50;
  return (
    <Frame
      name={name}
      title={words.title}
      desc={words.desc(points.map((place) => drawn.zone.item(place.what, placed(place))))}
      width={width}
      height={height}
    >
      <rect
        x={x.left}
        y={y(shown.length - 1)}
        width={x.right - x.left}
        height={bottom - y(shown.length - 1)}
        fill="none"
        stroke="currentColor"
        stroke-width={2}
      />
      {shown.map((place, at) => {
        const before = shown[at - 1];
        const apart = before && place.at - before.at;
        return (
          <g data-part={place.part} data-at={place.at}>
            {place.part === 'dump' && (
              <path
                d={`M${x.row - 12} ${round(y(at) + 5)}L${x.row} ${round(y(at) - 12)}L${x.row + 12} ${round(y(at) + 5)}Z`}
                fill="currentColor"
              />
            )}
            {before && (
              <g data-apart={apart}>
                <Dimension
                  from={[x.dimension, y(at - 1)]}
                  to={[x.dimension, y(at)]}
                  text={sayFigure(toBase(apart!, place.unit), place.unit)}
                  at={[x.figures, (y(at - 1) + y(at)) / 2]}
                />
              </g>
            )}
            <Line from={[x.right, y(at)]} to={[x.words - 6, y(at)]} width={1} />
            <Text x={x.words} y={y(at)} lines={[place.what, ...placed(place)]} />
          </g>
        );
      })}
      <Text x={0} y={bottom + 38} lines={[drawn.zone.scale]} />
    </Frame>
  );
}
