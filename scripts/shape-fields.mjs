/**
 * The fields of a record shape, read from the source of the shapes, those of the shape it extends first:
 * `{ name, type, optional, doc }`. Throws an Error when there is no such shape.
 */
export function fieldsOf(source, shape) {
  const head = new RegExp(`^(?:export )?interface ${shape}(?:<[^{]*>)?(?: extends (\\w+))? \\{$`, 'm').exec(source);
  if (!head) throw new Error(`There is no interface ${shape}.`);
  const body = source.slice(head.index + head[0].length).split(/\r?\n\}/, 1)[0];
  const inherited = head[1] ? fieldsOf(source, head[1]) : [];
  return [...inherited, ...readFields(body)].filter(({ name }) => name !== 'kind');
}

/** Members stand two spaces in; what stands deeper belongs to the one above. */
function readFields(body) {
  const fields = [];
  let doc = [];
  for (const line of body.split(/\r?\n/)) {
    const member = /^ {2}readonly (\w+)(\??): (.*)$/.exec(line);
    if (member) {
      fields.push({ name: member[1], optional: member[2] === '?', type: member[3], doc: doc.join(' ') });
      doc = [];
    } else if (/^ {2,3}(\/\*)?\*/.test(line)) {
      const words = line.replace(/^\s*(\/\*\*|\*\/|\*)\s?/, '').replace(/\s*\*\/$/, '');
      if (words) doc.push(words);
    } else if (fields.length > 0 && line.trim() !== '') {
      const last = fields[fields.length - 1];
      last.type = `${last.type} ${line.trim()}`;
    }
  }
  return fields.map((field) => ({ ...field, type: field.type.replace(/;$/, '') }));
}
