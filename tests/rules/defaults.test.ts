import { describe, expect, test } from 'vitest';
import { readAgency } from '../../src/rules/agency.ts';
import { knowledge, knowledgeOf } from '../../src/rules/knowledge.ts';
import { overlay } from '../../src/rules/overlay.ts';
import { solved } from './facts.ts';

const residue = (facts: Parameters<typeof solved>[0], from = knowledge) => solved(facts, from).get('residue')?.value;

describe('a default that hangs on a choice', () => {
  test('stands in the place of the plain one: least residue of a grade', () => {
    expect(residue({})).toBeCloseTo(0.6, 12);
    expect(residue({ 'tack-grade': 'mc-30', 'tack-kind': 'cutback' })).toBeCloseTo(0.5, 12);
    expect(residue({ 'tack-grade': 'rc-250', 'tack-kind': 'cutback' })).toBeCloseTo(0.65, 12);
    expect(residue({ 'tack-kind': 'asphalt' })).toBeCloseTo(1, 12);
  });

  test('gives way to what is said', () => {
    expect(residue({ 'tack-grade': 'mc-30', 'tack-kind': 'cutback', residue: [58, '%'] })).toBeCloseTo(0.58, 12);
  });

  test('with no figure nothing is taken, and what would rest on it is not worked out', () => {
    const facts = { 'tack-kind': 'cutback', 'tack-residual': [0.05, 'gal/yd2'] } as const;
    expect(residue(facts)).toBeUndefined();
    expect(solved(facts).get('tack-rate')).toBeUndefined();
    expect(solved({ ...facts, residue: [50, '%'] }).get('tack-rate')?.value).toBeDefined();
  });

  test("nor is an agency's one figure taken there", () => {
    const agency = readAgency(
      { name: 'A county', source: 'a directive', defaults: { residue: { number: 62, unit: '%' } } },
      knowledge,
    );
    const own = knowledgeOf(overlay(knowledge.records, agency));
    expect(residue({}, own)).toBeCloseTo(0.62, 12);
    expect(residue({ 'tack-kind': 'cutback' }, own)).toBeUndefined();
  });

  describe('without a plain one beside it', () => {
    const records = {
      ...knowledge.records,
      quantities: knowledge.records.quantities.map((record) => {
        if (record.id !== 'residue') return record;
        const { default: _plain, defaultWhen: _others, ...rest } = record;
        const when = (is: string) => [{ choice: knowledge.choices.get('tack-kind')!, is: [is] }];
        return { ...rest, defaultWhen: [{ when: when('emulsion'), figure: { number: 61, unit: '%' as const } }] };
      }),
    };
    const own = knowledgeOf(records);

    test('it is taken where the choice is so, assumed or said', () => {
      expect(residue({}, own)).toBeCloseTo(0.61, 12);
      expect(residue({ 'tack-kind': 'emulsion' }, own)).toBeCloseTo(0.61, 12);
      expect(solved({}, own).get('residue')?.assumed).toEqual(['residue']);
    });

    test('and nothing is where it is another', () => {
      expect(residue({ 'tack-kind': 'cutback' }, own)).toBeUndefined();
    });
  });
});
