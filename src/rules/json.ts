/** Levels of nesting that anything of ours stays well under; JSON.parse takes more than JSON.stringify can write again. */
const mostLevels = 64;

/** Reads JSON that was sent. Undefined for text that is none, or is nested as nothing of ours is. Never throws. */
export function jsonIn(text: string): { readonly json: unknown } | undefined {
  try {
    const json: unknown = JSON.parse(text);
    return isNestedDeep(json) ? undefined : { json };
  } catch {
    return undefined;
  }
}

/** True for a value that nests deeper than anything of ours: it is not to be walked or written. */
export function isNestedDeep(sent: unknown): boolean {
  let level: unknown[] = [sent];
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > mostLevels) return true;
    level = level.flatMap((value) => (typeof value === 'object' && value !== null ? Object.values(value) : []));
  }
  return false;
}
