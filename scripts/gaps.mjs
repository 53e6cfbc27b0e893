import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** One request of a log line: a bare question, or JSON with `question`, or `ask`, or the `turns` of a talk. */
export function requestOf(line) {
  const text = line.trim();
  if (!text.startsWith('{')) return { question: text };
  try {
    const { question, ask, turns, units, agency } = JSON.parse(text);
    const first = question ?? ask ?? turns?.[0];
    return typeof first === 'string' ? { question: first, units, agency } : undefined;
  } catch {
    return undefined;
  }
}

/** The requests of a log, blank lines and remarks apart, and the numbers of the lines that could not be read. */
export function requestsIn(log) {
  const requests = [];
  const unread = [];
  log.split('\n').forEach((line, at) => {
    if (/^\s*($|\/\/|#)/.test(line)) return;
    const request = requestOf(line);
    if (request) requests.push(request);
    else unread.push(at + 1);
  });
  return { requests, unread };
}

/** What was not answered, by why not: each reason with its questions, the commonest first. */
export function gapsIn(requests, replies) {
  const groups = new Map();
  requests.forEach(({ question }, i) => {
    const { kind, reason, clarify, text } = replies[i];
    if (kind !== 'unknown' && kind !== 'clarify') return;
    const why = reason ?? kind;
    groups.set(why, [...(groups.get(why) ?? []), { question, said: (clarify?.text ?? text).split('\n')[0] }]);
  });
  return [...groups].sort((a, b) => b[1].length - a[1].length);
}

/** Groups the unanswered questions of a log by reason, and prints a line for the corpus for each. */
export function gaps(root, [file, ...others]) {
  if (!file || others.length > 0) throw new Error('Name one file: npm run gaps -- FILE, with a question on each line.');
  const { requests, unread } = requestsIn(readFileSync(file, 'utf8'));
  if (unread.length > 0)
    process.stderr.write(`Left out, for they are no JSON with a question: lines ${unread.join(', ')}.\n`);
  if (requests.length === 0)
    throw new Error(`${file} holds no questions: put one on each line, or JSON with "question".`);
  const { stdout, stderr, status } = spawnSync(process.execPath, [join(root, 'scripts', 'run.mjs'), 'ask', '--jsonl'], {
    input: requests.map((request) => `${JSON.stringify(request)}\n`).join(''),
    encoding: 'utf8',
    maxBuffer: 1 << 30,
  });
  const replies = stdout
    .split('\n')
    .filter(Boolean)
    .map((line) => JSON.parse(line));
  if (replies.length !== requests.length)
    throw new Error(`The answers stopped short (exit code ${status}):\n${stderr}`);
  const found = gapsIn(requests, replies);
  const open = found.reduce((sum, [, list]) => sum + list.length, 0);
  const lines = [`${open} of ${requests.length} questions not answered.`];
  for (const [reason, list] of found) {
    lines.push('', `# ${reason} (${list.length})`);
    for (const { question, said } of list) lines.push(`// ${said}`, JSON.stringify({ ask: question, holds: [] }));
  }
  process.stdout.write(`${lines.join('\n')}\n`);
  return 0;
}
