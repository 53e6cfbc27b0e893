import type { Language, Reply, UnitSystem } from '../../ask/reply.ts';
import { describe } from '../fault.ts';
import { lineLimit } from '../limits.ts';
import { en } from '../wording/en.ts';
import type { Files } from './files.ts';
import { readRequest } from './read-request.ts';
import { splitLines, tooLong } from './split-lines.ts';
import type { World } from './world.ts';
import { write } from './write.ts';

interface Defaults {
  readonly units?: UnitSystem;
  readonly lang?: Language;
}

/**
 * Answers one request a line, one reply a line, in order; each is written before the next line is read, so that endless
 * input takes no more memory than one line. Resolves to 0, or 1 when a line met a fault of ours.
 */
export async function answerLines({ units, lang }: Defaults, files: Files, world: World): Promise<number> {
  const defaults = { ...(units ? { units } : {}), ...(lang ? { lang } : {}), ...files };
  let status = 0;
  for await (const line of splitLines(world.stdin, lineLimit)) {
    if (line !== tooLong && line.trim() === '') continue;
    let reply: Reply;
    try {
      reply =
        line === tooLong
          ? world.refuse('out-of-scope', en.command.lineTooLong(lineLimit))
          : answerTo(line, defaults, world);
    } catch (fault) {
      status = 1;
      await write(world.stderr, `${en.command.faultDetail(describe(fault))}\n`);
      reply = world.refuse('out-of-scope', en.command.fault);
    }
    await write(world.stdout, `${JSON.stringify(reply)}\n`);
  }
  return status;
}

function answerTo(line: string, defaults: Defaults & Files, { ask, refuse }: World): Reply {
  const request = readRequest(line);
  return typeof request === 'string' ? refuse('no-goal', request) : ask({ ...defaults, ...request });
}
