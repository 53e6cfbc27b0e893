import type { Dress } from '../ask/views/document.tsx';

/** Addresses of what pages are drawn with, as the empty page brings them along. */
export function dressOfPage(): Dress | undefined {
  const text = document.documentElement.dataset.dress;
  return text ? (JSON.parse(text) as Dress) : undefined;
}
