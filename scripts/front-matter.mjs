import * as z from 'zod';

const kinds = 'stage craft material equipment safety emergency traffic weather defect term quantity trainer'.split(' ');
const marks = 'published restated practice agency memory derived'.split(' ');
const withDocument = ['published', 'restated'];

const line = z
  .string({ error: 'is missing' })
  .min(1, 'is empty')
  .max(400, 'is too long')
  .regex(/^[^{}<>]*$/, 'has no figures and no marks in it: { } < >');
const list = (of) => z.array(of, { error: 'is missing: give a list, one "- item" a line' }).min(1, 'is empty');

const basis = line.refine(
  (text) => {
    const [mark, document] = text.split(/: (.*)/s);
    return marks.includes(mark) && withDocument.includes(mark) === (document !== undefined);
  },
  `is one of ${marks.join(', ')}; ${withDocument.join(' and ')} name their document: "published: FM 5-434, ch. 4"`,
);

/** What stands above a card, checked. Rank, first and happening are of emergencies, and of those alone. */
export const frontMatter = z
  .strictObject({
    id: line,
    title: line,
    kind: z.enum(kinds, { error: `is one of ${kinds.join(', ')}` }),
    rank: z.coerce.number({ error: 'is a whole number' }).int('is a whole number').optional(),
    first: line.optional(),
    asks: list(line).min(3, 'give three ways of asking at least'),
    happening: list(line).optional(),
    links: list(line),
    seen: list(basis),
    own: list(line).optional(),
  })
  .refine(
    ({ kind, rank, first, happening }) =>
      [rank, first, happening].every((field) => (field !== undefined) === (kind === 'emergency')),
    'rank, first and happening are for emergencies: all three there, and nowhere else',
  );

/** Splits a card's file into its fields and its body. Fields are `name: value` or `name:` with lines of `- item` below it. */
export function readFrontMatter(text, fault) {
  const parts = /^---\r?\n([\s\S]*?)\r?\n---\r?\n([\s\S]*)$/.exec(text);
  if (!parts) throw fault('it must begin with front matter between two lines of ---');
  const fields = {};
  let list;
  for (const row of parts[1].split(/\r?\n/)) {
    const item = /^- (.*)$/.exec(row);
    const field = /^([a-z]+):(?: (.*))?$/.exec(row);
    if (item && list) list.push(item[1].trim());
    else if (field && Object.hasOwn(fields, field[1])) throw fault(`${field[1]}: is there twice`);
    else if (field?.[2]) fields[field[1]] = field[2].trim();
    else if (field) fields[field[1]] = list = [];
    else throw fault(`"${row.slice(0, 40)}" is neither "name: value" nor "- item"`);
    if (field?.[2]) list = undefined;
  }
  return { fields, body: parts[2] };
}
