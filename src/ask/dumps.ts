import { fromBase } from '../calc/quantity.ts';
import { sayFigure } from '../calc/wording.ts';
import type { Place } from './reply.ts';
import { tidy } from './say.ts';
import type { Voice } from './voice.ts';
import { drawn } from './wording/drawn.en.ts';

/** More dump points than anybody counts: then none are listed. */
const most = 200;

/** Every dump point of a patch, in order from where the blade starts, and the end of the patch; none where its length is not known. */
export function dumpsOf(quantity: string, { solved, unit: unitOf, isGiven }: Voice): readonly Place[] {
  const spacing = solved.get('dump-spacing')?.value;
  const length = isGiven('patch-length') ? solved.get('patch-length')?.value : undefined;
  if (quantity !== 'dump-spacing' || !spacing || !length || length / spacing > most) return [];
  const unit = unitOf('dump-spacing');
  const place = (what: string, part: string, at: number): Place => ({
    what,
    at: tidy(fromBase(at, unit)),
    unit,
    part,
    atText: sayFigure(at, unit),
  });
  const points: Place[] = [];
  for (let at = 0; at < length * (1 - 1e-9); at += spacing)
    points.push(place(drawn.dumps.dump(points.length + 1), 'dump', at));
  return [...points, place(drawn.dumps.end, 'patch-end', length)];
}
