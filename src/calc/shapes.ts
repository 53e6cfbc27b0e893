/**
 * Areas and volumes of the shapes that patches, ruts, rows and piles are figured by. Any unit will do, as long as all
 * lengths are in the same one: areas come in its square, volumes in its cube. Plane and solid geometry, so no source is
 * named but where a rule of reckoning has a name. Every function throws RangeError for a length that is no length.
 */

/** Area of a rectangle: length × width. */
export function rectangle(length: number, width: number): number {
  mustBeLengths({ length, width });
  return length * width;
}

/** Volume of a patch that tapers from one thickness to another: length × width × their mean. */
export function taper(length: number, width: number, from: number, to: number): number {
  mustBeLengths({ from, to });
  return (rectangle(length, width) * (from + to)) / 2;
}

/** Volume of a wedge, thick along one edge and nothing along the other, be it an end feather or a side built up: length × width × thickness ÷ 2. */
export function wedge(length: number, width: number, thickness: number): number {
  return taper(length, width, thickness, 0);
}

/** Volume of a prismoid: height ÷ 6 × (one end + 4 × middle section + other end). Exact for every solid between two parallel planes with straight sides. */
export function prismoid(height: number, end: number, middle: number, otherEnd: number): number {
  mustBeLengths({ height, end, middle, 'other end': otherEnd });
  return (height / 6) * (end + 4 * middle + otherEnd);
}

/** Volume of a patch of full thickness inside and feathered to nothing along all four edges; length and width over all. Prismoid. */
export function featheredAllRound(length: number, width: number, feather: number, thickness: number): number {
  mustBeLengths({ feather });
  if (2 * feather > Math.min(length, width)) {
    throw new RangeError(
      `two feathers of ${feather} are wider than the patch: give the size over all, feathers included`,
    );
  }
  const inside = (by: number): number => rectangle(length - by, width - by);
  return prismoid(thickness, inside(0), inside(feather), inside(2 * feather));
}

/** Section of a triangle, for a sharp rut or a heaped row: width × height ÷ 2. */
export function triangle(width: number, height: number): number {
  return rectangle(width, height) / 2;
}

/** Section of a parabola, for a smooth rut or a row as a truck drops it: 2 ÷ 3 × width × height. */
export function parabola(width: number, height: number): number {
  return (2 * rectangle(width, height)) / 3;
}

/** Section of a trapezoid, for a row with a flat top: mean of the two widths × height. */
export function trapezoid(bottom: number, top: number, height: number): number {
  mustBeLengths({ bottom, top, height });
  return ((bottom + top) / 2) * height;
}

/** Radius of the circle that a rut of this width and depth is a segment of: (width² ÷ 4 + depth²) ÷ (2 × depth). */
export function segmentRadius(width: number, depth: number): number {
  mustBeLengths({ width, depth });
  if (depth === 0) throw new RangeError('a segment without depth is a straight line and has no radius: give the depth');
  return (width ** 2 / 4 + depth ** 2) / (2 * depth);
}

/** Section of a circular segment, the sector less its triangle: R² × acos((R − d) ÷ R) − (R − d) × √(2Rd − d²). */
export function segment(width: number, depth: number): number {
  const radius = segmentRadius(width, depth);
  const half = Math.atan2(width / 2, radius - depth);
  return radius ** 2 * half - ((radius - depth) * width) / 2;
}

/** Volume of a cone: a third of base × height, π × diameter² × height ÷ 12. */
export function cone(diameter: number, height: number): number {
  mustBeLengths({ diameter, height });
  return (Math.PI * diameter ** 2 * height) / 12;
}

/** Volume of a cone by a tape round its foot: circumference² × height ÷ (12 × π). */
export function coneByCircumference(circumference: number, height: number): number {
  return cone(circumference / Math.PI, height);
}

/** Height of a heap that stands at an angle, in degrees from level: width ÷ 2 × tan(angle). */
export function heapHeight(width: number, angle: number): number {
  mustBeLengths({ width });
  if (!(angle >= 0 && angle < 90)) throw new RangeError(`a heap stands at 0 to under 90 degrees, not at ${angle}`);
  return (width / 2) * Math.tan((angle * Math.PI) / 180);
}

/** Volume of a long pile with a ridge, length and width over all: a triangular prism and half a cone at each end. */
export function ridgePile(length: number, width: number, height: number): number {
  mustBeLengths({ length });
  if (length < width) throw new RangeError(`a ridge pile is at least as long as wide, not ${length} by ${width}`);
  return triangle(width, height) * (length - width) + cone(width, height);
}

/** Throws RangeError, naming the length, for one that is below nothing or not finite. */
export function mustBeLengths(lengths: Readonly<Record<string, number>>): void {
  for (const [name, length] of Object.entries(lengths)) {
    if (!Number.isFinite(length) || length < 0)
      throw new RangeError(`${name} cannot be ${length}: give a figure from 0 up`);
  }
}
