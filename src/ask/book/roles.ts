import { kindOf } from './book.ts';
import type { Change } from './change.ts';

/** What the holder of a link may do: look; record a day's work; edit everything, links included. */
export const roles = ['look', 'record', 'edit'] as const;
export type Role = (typeof roles)[number];

export const isRole = (text: unknown): text is Role => (roles as readonly unknown[]).includes(text);

const recorded = new Set(['load', 'hours', 'tack', 'weather', 'event']);

/** True for a change that a role may make: who records writes down the day and ticks patches off, and changes no patch. */
export function mayMake(role: Role, { line, set }: Change): boolean {
  if (role === 'edit') return true;
  if (role === 'look') return false;
  const kind = kindOf(line);
  return recorded.has(kind) || (kind === 'patch' && Object.keys(set).every((field) => field === 'done'));
}
