import { toBase } from '../../calc/quantity.ts';
import { isUnit, type Unit } from '../../calc/units.ts';
import type { Knowledge } from '../../rules/knowledge.ts';
import { type Fact, factsOfJob } from '../facts.ts';
import type { Job, JobFact, TalkBook, TalkPatch } from '../reply.ts';
import type { Entry, Patch, Sheet } from './sheet.ts';

/** Most patches that a conversation carries; more are for the job page. */
export const mostPatches = 60;

/** True for a fact that is of one patch and not of the whole job: its size, and what was laid of it. */
export function isOfPatch({ quantities }: Knowledge, id: string): boolean {
  const record = quantities.get(id);
  if (!record) return false;
  return (record.plain === true && id !== 'posted-speed') || /^(?:patch|placed|loads|deepest|rut|pothole)-/.test(id);
}

/** The conversation's book as a sheet: what is known of all patches beside those of each. */
export function talkSheet(book: TalkBook, facts: readonly Fact[], knowledge: Knowledge): Sheet {
  return {
    facts: facts.filter(({ quantity }) => !isOfPatch(knowledge, quantity)).map(({ fresh: _fresh, ...fact }) => fact),
    patches: book.patches.map(
      (patch): Patch => ({
        line: lineOf(patch),
        label: patch.label,
        done: patch.done === true,
        facts: patchFacts(patch, knowledge),
      }),
    ),
    loads: book.patches.flatMap((patch) => (patch.laid || patch.laidTo ? [laidEntry(patch)] : [])),
    hours: [],
    tack: [],
    weather: [],
    events: [],
    order: 'road',
  };
}

export const lineOf = ({ label }: TalkPatch): string => `patch/${label}`;

/** The facts of a patch as the engine takes them; what no record knows is left out. */
export const patchFacts = ({ facts }: TalkPatch, knowledge: Knowledge): Fact[] =>
  factsOfJob({ v: 1, turn: 0, facts }, knowledge);

function laidEntry(patch: TalkPatch): Entry {
  return {
    line: `load/${patch.label}`,
    text: (field) => (field === 'patch' ? lineOf(patch) : undefined),
    figure: (field) => (field === 'placed-mass' ? patch.laid : field === 'placed-length' ? patch.laidTo : undefined),
  };
}

/** The patch of that label. */
export const patchOf = (book: TalkBook | undefined, label: string): TalkPatch | undefined =>
  book?.patches.find((patch) => patch.label.toLowerCase() === label.toLowerCase());

/** The book with a patch put in the place of the one of its label, or at the end; what stood there can be had back. */
export function withPatch(book: TalkBook | undefined, patch: TalkPatch): TalkBook {
  const before = patchOf(book, patch.label);
  const patches = book?.patches ?? [];
  return {
    patches: before ? patches.map((each) => (each === before ? patch : each)) : [...patches, patch],
    undo: { label: patch.label, ...(before ? { patch: before } : {}) },
  };
}

export function withoutPatch(book: TalkBook, patch: TalkPatch): TalkBook {
  return { patches: book.patches.filter((each) => each !== patch), undo: { label: patch.label, patch } };
}

/** The book as it was before the last thing told. */
export function undone({ patches, undo }: TalkBook): TalkBook {
  if (!undo) return { patches };
  const { label, patch } = undo;
  const there = patches.some((each) => each.label === label);
  if (!patch) return { patches: patches.filter((each) => each.label !== label) };
  if (there) return { patches: patches.map((each) => (each.label === label ? patch : each)) };
  const after = patches.findIndex((each) => Number(each.label) > Number(label));
  const place = after < 0 ? patches.length : after;
  return { patches: [...patches.slice(0, place), patch, ...patches.slice(place)] };
}

/** The label for the next patch: the number after the highest. */
export function nextTalkLabel(book: TalkBook | undefined): string {
  const numbers = (book?.patches ?? []).map(({ label }) => (/^\d{1,6}$/.test(label) ? Number(label) : 0));
  return String(Math.max(0, ...numbers) + 1);
}

/** Reads a book that came back with a job; undefined when it is damaged. `isFact` tells a sound fact of a job. */
export function readTalkBook(
  sent: unknown,
  isFact: (fact: unknown) => fact is JobFact,
  cleaned: (fact: JobFact) => JobFact,
): TalkBook | undefined {
  if (typeof sent !== 'object' || sent === null) return undefined;
  const { patches, undo } = sent as Record<string, unknown>;
  if (!Array.isArray(patches) || patches.length > mostPatches) return undefined;
  const patch = (each: unknown): TalkPatch | undefined => {
    if (typeof each !== 'object' || each === null) return undefined;
    const { label, facts, laid, laidTo, done } = each as Record<string, unknown>;
    if (!isLabel(label) || !Array.isArray(facts) || facts.length > 40 || !facts.every(isFact)) return undefined;
    if ((laid !== undefined && !isFigure(laid, 'ton')) || (laidTo !== undefined && !isFigure(laidTo, 'ft')))
      return undefined;
    return {
      label,
      facts: facts.map(cleaned),
      ...(laid === undefined ? {} : { laid: { number: (laid as Said).number, unit: (laid as Said).unit } }),
      ...(laidTo === undefined ? {} : { laidTo: { number: (laidTo as Said).number, unit: (laidTo as Said).unit } }),
      ...(done === true ? { done: true as const } : {}),
    };
  };
  const read = patches.map(patch);
  if (!read.every((each) => each !== undefined)) return undefined;
  if (undo === undefined) return { patches: read };
  if (typeof undo !== 'object' || undo === null) return undefined;
  const { label, patch: before } = undo as Record<string, unknown>;
  const old = before === undefined ? undefined : patch(before);
  if (!isLabel(label) || (before !== undefined && !old)) return undefined;
  return { patches: read, undo: { label, ...(old ? { patch: old } : {}) } };
}

type Said = { readonly number: number; readonly unit: Unit };

const isLabel = (x: unknown): x is string => typeof x === 'string' && /^[\p{L}\p{N} .#-]{1,20}$/u.test(x);

function isFigure(x: unknown, like: 'ton' | 'ft'): x is Said {
  if (typeof x !== 'object' || x === null) return false;
  const { number, unit } = x as Record<string, unknown>;
  if (typeof number !== 'number' || !Number.isFinite(number) || number < 0 || typeof unit !== 'string' || !isUnit(unit))
    return false;
  return (
    (like === 'ton' ? ['ton', 't', 'lb', 'kg'] : ['ft', 'm', 'yd', 'mi', 'in']).includes(unit) &&
    toBase(number, unit) < 1e9
  );
}

/** A job with another book in it; none at all when the book is empty. */
export function jobWith(job: Job, book: TalkBook | undefined): Job {
  const { book: _old, ...rest } = job;
  return book && (book.patches.length > 0 || book.undo) ? { ...rest, book } : rest;
}
