/** Strips `readonly` all the way down and flattens intersections, so that a schema's type and a written one compare. */
export type Plain<T> = T extends readonly [infer A, infer B]
  ? [Plain<A>, Plain<B>]
  : T extends readonly (infer Item)[]
    ? Plain<Item>[]
    : T extends object
      ? { -readonly [K in keyof T]: Plain<T[K]> }
      : T;

/** `true` when both types are the same, optional members included. */
export type Same<A, B> = Identical<Plain<A>, Plain<B>>;

type Identical<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;

/** Fails to compile on anything but `true`. */
export type Expect<T extends true> = T;
