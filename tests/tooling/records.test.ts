import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { indexPath, renderIndex } from '../../scripts/generate.mjs';
import { kinds } from '../../scripts/kinds.mjs';
import { fieldsOf } from '../../scripts/shape-fields.mjs';
import { launch, lendPackages, put, smallProject } from './project.ts';

const shapes = `
interface Base {
  /** The file's name. */
  readonly id: string;
  readonly title: string;
}

export interface LimitRecord<D extends string = string> extends Base {
  readonly kind: 'limit';
  /**
   * The figure
   * it judges.
   */
  readonly on: D;
  readonly max?: { readonly number: number };
  readonly examples: {
    readonly holds: string;
    readonly breaks: string;
  };
}
`;

describe('the fields of a shape', () => {
  test('are read with their words, those of the base first', () => {
    expect(fieldsOf(shapes, 'LimitRecord')).toEqual([
      { name: 'id', type: 'string', optional: false, doc: "The file's name." },
      { name: 'title', type: 'string', optional: false, doc: '' },
      { name: 'on', type: 'D', optional: false, doc: 'The figure it judges.' },
      { name: 'max', type: '{ readonly number: number }', optional: true, doc: '' },
      {
        name: 'examples',
        type: '{ readonly holds: string; readonly breaks: string; }',
        optional: false,
        doc: '',
      },
    ]);
  });

  test('of a shape that is not there are refused', () => {
    expect(() => fieldsOf(shapes, 'StepRecord')).toThrow('StepRecord');
  });

  test('of every kind in the project can be read, whichever file holds its shape', () => {
    const folder = new URL('../../src/rules/', import.meta.url);
    const modules = readdirSync(folder).filter((name) => name.startsWith('shapes'));
    const source = modules.map((name) => readFileSync(new URL(name, folder), 'utf8')).join('\n');
    for (const { shape, fields } of kinds.filter(({ later }) => !later)) {
      const names = fieldsOf(source, fields ?? shape).map(({ name }) => name);
      expect(names).toEqual(expect.arrayContaining(['id', 'title', 'because', 'sources']));
    }
  });
});

function projectOfRules(): string {
  const root = smallProject({ 'src/rules/shapes.ts': shapes });
  lendPackages(root);
  return root;
}

describe('npm run new', () => {
  test('writes a stub that names every field, and takes it into the index', async () => {
    const root = projectOfRules();
    const made = await launch(root, ['new', 'limit', 'lift-max']);
    expect(made).toMatchObject({ code: 0 });
    expect(made.stdout).toContain('npm run check');
    expect(readFileSync(join(root, 'src/rules/limits/lift-max.ts'), 'utf8')).toBe(
      [
        `import { limit } from '../shapes.ts';`,
        '',
        'export default limit({',
        `  id: 'lift-max',`,
        '  // title: string.',
        '  // on: D. The figure it judges.',
        '  // max?: { number: number }.',
        '  // examples: { holds: string; breaks: string; }.',
        '});',
        '',
      ].join('\n'),
    );
    expect(readFileSync(join(root, indexPath), 'utf8')).toContain(
      'export const limits: readonly LimitRecord[] = [limitLiftMax];',
    );
  });

  test.each([
    [['limit', 'lift-max'], /There is a limit lift-max already: src\/rules\/limits\/lift-max\.ts/],
    [['limits', 'Lift_Max'], /lower case words joined by hyphens/],
    [['limit', '../../x'], /is no id/],
    [['limit'], /Say the id too/],
    [['limt', 'x'], /no kind of record called limt.*Kinds: limit\./],
    [[], /Say the kind and the id/],
    [['step', 'sweep'], /has no StepRecord yet/],
  ])('refuses %s', async (args, words) => {
    const root = projectOfRules();
    put(root, { 'src/rules/limits/lift-max.ts': '' });
    const refused = await launch(root, ['new', ...args]);
    expect(refused).toMatchObject({ code: 1, stdout: '' });
    expect(refused.stderr).toMatch(words);
  });
});

describe('the index of records', () => {
  test('has every record, sorted by id, in a list of its kind', () => {
    const root = smallProject({
      'src/rules/limits/b.ts': '',
      'src/rules/limits/a-2-b.ts': '',
      'src/rules/quantities/b.ts': '',
      'src/rules/limits/notes.md': '',
    });
    const index = renderIndex(root);
    expect(index).toContain(`import quantityB from './quantities/b.ts';`);
    expect(index).toContain('export const limits: readonly LimitRecord[] = [limitA2B, limitB];');
    expect(index).toContain('export const tables: readonly TableRecord[] = [];');
    expect(index).not.toContain('StepRecord');
  });

  test('takes in a later kind as soon as it has a record', () => {
    const index = renderIndex(smallProject({ 'src/rules/steps/sweep.ts': '' }));
    expect(index).toContain('export const steps: readonly StepRecord[] = [stepSweep];');
    expect(index).toMatch(/import type \{[^}]*StepRecord[^}]*\} from '\.\/[a-z-]+\.ts';/);
  });
});
