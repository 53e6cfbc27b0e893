import type * as z from 'zod';
import type { Wrong } from './problem.ts';
import { en } from './wording/en.ts';

/** What a request failed on, each with its place and what to do about it. */
export function wrongs(error: z.ZodError): Wrong[] {
  return error.issues.flatMap((issue) => {
    if (issue.code !== 'unrecognized_keys') return [{ detail: issue.message, pointer: pointer(issue.path) }];
    return issue.keys.map((key) => ({
      detail: en.unknownMember(key.slice(0, 60)),
      pointer: pointer([...issue.path, key]),
    }));
  });
}

/** A path as a JSON Pointer in a URI fragment (RFC 6901, sections 3 and 6). */
function pointer(path: readonly PropertyKey[]): string {
  return `#${path.map((part) => `/${encodeURIComponent(wellFormed(part).replaceAll('~', '~0').replaceAll('/', '~1'))}`).join('')}`;
}

/** A part of a path without halves of characters, which no address can hold. */
const wellFormed = (part: PropertyKey): string => String(part).replace(/\p{Surrogate}/gu, '\ufffd');
