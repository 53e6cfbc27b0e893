import type { Reply, Request } from '../../ask/reply.ts';

/** What the command needs of the world. */
export interface World {
  readonly ask: (request: Request) => Reply;
  readonly refuse: (reason: NonNullable<Reply['reason']>, text: string) => Reply;
  readonly version: string;
  readonly stdin: NodeJS.ReadableStream & { readonly isTTY?: boolean };
  readonly stdout: NodeJS.WritableStream;
  readonly stderr: NodeJS.WritableStream;
}
