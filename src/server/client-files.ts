import { readFileSync } from 'node:fs';
import { fromRoot } from './root.ts';

/** A file of the page as it was built (`npm start` builds it): what the browser runs, and the icons. */
export interface ClientFile {
  /** Without the hash that is in the file's name. */
  readonly name: string;
  readonly file: string;
  readonly type: string;
  /** SHA-256 of the whole content, in hex. */
  readonly hash: string;
  readonly bytes: number;
  /** Size packed, where it is kept packed. */
  readonly br?: number;
  readonly gz?: number;
  /** Files that it loads at once. */
  readonly needs: readonly string[];
}

export interface ClientBuild {
  /** Day it was built on. */
  readonly built: string;
  readonly files: readonly ClientFile[];
}

const folder = 'dist/client';

/** What was built for the browser; nothing where it was not, and then the page works as a plain form. */
export const clientBuild: ClientBuild = readBuild();

function readBuild(): ClientBuild {
  try {
    return JSON.parse(readFileSync(fromRoot(`${folder}/files.json`), 'utf8')) as ClientBuild;
  } catch {
    return { built: '', files: [] };
  }
}

/** Where a file of the build is served. */
export const addressOf = ({ file }: ClientFile): string => `/assets/${file}`;

/** A file of the build by its name without the hash. */
export const clientFile = (name: string): ClientFile | undefined =>
  clientBuild.files.find((each) => each.name === name);

type Coding = 'br' | 'gz';
const held = new Map<string, Uint8Array<ArrayBuffer>>();

/** Its bytes, packed or not; kept from the first time on, so that a build made meanwhile does not mix with this one. */
export function bytesOf(file: ClientFile, coding?: Coding): Uint8Array<ArrayBuffer> {
  const path = coding ? `${file.file}.${coding}` : file.file;
  const before = held.get(path);
  if (before) return before;
  const bytes = new Uint8Array(readFileSync(fromRoot(`${folder}/${path}`)));
  held.set(path, bytes);
  return bytes;
}
