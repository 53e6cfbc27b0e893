import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Dress } from '../ask/views/document.tsx';
import { fromRoot } from './root.ts';

interface Asset {
  /** Address with a hash of the content in it, so that a browser may keep it for good. */
  readonly address: string;
  readonly path: string;
  readonly hash: string;
  readonly type: string;
  readonly body: string;
}

export const stylesheet = asset('bladehand.css', 'text/css; charset=utf-8', [
  'base.css',
  'page.css',
  'answer.css',
  'media.css',
]);
export const quizStylesheet = asset('quiz.css', 'text/css; charset=utf-8', ['quiz.css']);
export const icon = asset('bladehand.svg', 'image/svg+xml', ['bladehand.svg']);

/** What pages are drawn with. */
export const dress: Dress = { stylesheet: stylesheet.address, quiz: quizStylesheet.address, icon: icon.address };

/** An asset made of these files, in this order. */
function asset(name: string, type: string, files: readonly string[]): Asset {
  const body = files.map((file) => readFileSync(fromRoot(`src/server/assets/${file}`), 'utf8')).join('\n');
  const hash = createHash('sha256').update(body).digest('hex').slice(0, 12);
  const path = `/assets/${name}`;
  return { address: `${path}?v=${hash}`, path, hash, type, body };
}
