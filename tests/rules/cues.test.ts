import { expect, test } from 'vitest';
import { readCue, wordsOf } from '../../src/ask/cue.ts';
import { dimensions } from '../../src/calc/dimension.ts';
import * as index from '../../src/rules/index.generated.ts';
import type { Base, ChoiceRecord, QuantityRecord } from '../../src/rules/shapes.ts';
import { heads } from '../../src/rules/words.ts';

const records = Object.values(index).flat() as unknown as (Base & { readonly kind: string })[];

/** Aliases of one word: typed, they are read as their head, so in a cue they would never be heard. */
const headOf = new Map(
  Object.entries(heads).flatMap(([head, aliases]) =>
    aliases.filter((alias) => !alias.includes(' ') && !(alias in heads)).map((alias) => [alias, head] as const),
  ),
);
const marks = new Set([
  '@check',
  '@why',
  '@after',
  '#figure',
  '#thin',
  '@enough',
  '#number',
  '#name',
  '#parts',
  ...Object.keys(dimensions).map((name) => `#${name}`),
]);

const cuesOf = (record: Base & { readonly kind: string }): readonly string[] => [
  ...(record.cues ?? []),
  ...(record.kind === 'choice'
    ? (record as unknown as ChoiceRecord).options.flatMap(({ cues, within }) => [...cues, ...(within?.cues ?? [])])
    : []),
];

function faultOf(word: string): string | undefined {
  if (/^[@#]/.test(word)) return marks.has(word) ? undefined : 'no such mark';
  if (!/^[\p{Ll}\d][\p{Ll}\d'-]*$/u.test(word)) return 'not a word in lower case';
  const head = headOf.get(word);
  return head ? `is read as ${head}: write that` : undefined;
}

test.each(
  records.filter((record) => cuesOf(record).length).map((record) => [`${record.kind}/${record.id}`, record] as const),
)('the cues of %s can be heard', (_, record) => {
  const faults = cuesOf(record).flatMap((cue) =>
    [...wordsOf(readCue(cue))].flatMap((word) => {
      const fault = faultOf(word);
      return fault ? [`"${cue}": ${word} ${fault}`] : [];
    }),
  );
  expect(faults).toEqual([]);
});

test('role words and settings are head words', () => {
  const faults = (records.filter(({ kind }) => kind === 'quantity') as unknown as QuantityRecord[]).flatMap(
    ({ id, roles, setting = [] }) =>
      [...(roles?.after ?? []), ...(roles?.before ?? []), ...setting].flatMap((word) => {
        const fault = faultOf(word);
        return fault ? [`${id}: ${word} ${fault}`] : [];
      }),
  );
  expect(faults).toEqual([]);
});
