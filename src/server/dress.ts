import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Dress } from '../ask/views/document.tsx';
import { addressOf, clientBuild, clientFile } from './client-files.ts';
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
  'phone.css',
  'book.css',
  'pages.css',
  'media.css',
]);
export const quizStylesheet = asset('quiz.css', 'text/css; charset=utf-8', ['quiz.css']);
export const icon = asset('bladehand.svg', 'image/svg+xml', ['bladehand.svg']);

/** What pages are drawn with. */
export const dress: Dress = {
  stylesheet: stylesheet.address,
  quiz: quizStylesheet.address,
  icon: icon.address,
  ...scripts(),
};

function scripts(): Pick<Dress, 'client'> {
  const [page, look, answers, touchIcon] = ['page.js', 'look.js', 'answers.js', 'icon-180.png'].map(clientFile);
  if (!page || !look || !answers) return {};
  const parts = [answers.file, ...answers.needs].filter((file) => file !== page.file && !page.needs.includes(file));
  return {
    client: {
      page: addressOf(page),
      needs: page.needs.map((file) => `/assets/${file}`),
      look: addressOf(look),
      answers: parts.map((file) => `/assets/${file}`),
      touchIcon: touchIcon && addressOf(touchIcon),
      manifest: '/manifest.webmanifest',
      built: clientBuild.built,
    },
  };
}

/** An asset made of these files, in this order. */
function asset(name: string, type: string, files: readonly string[]): Asset {
  const body = files.map((file) => readFileSync(fromRoot(`src/server/assets/${file}`), 'utf8')).join('\n');
  const hash = createHash('sha256').update(body).digest('hex').slice(0, 12);
  const path = `/assets/${name}`;
  return { address: `${path}?v=${hash}`, path, hash, type, body };
}
