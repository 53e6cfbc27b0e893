import type { Context } from 'hono';
import { shellPage } from '../../ask/views/shell.tsx';
import { page } from '../../ask/wording/page.en.ts';
import { addressOf, bytesOf, type ClientFile, clientBuild, clientFile } from '../client-files.ts';
import type { Doors } from '../doors.ts';
import { dress, icon, quizStylesheet, stylesheet } from '../dress.ts';
import type { App, Env } from '../env.ts';
import { sha256 } from '../hash.ts';
import { onlyThese } from '../methods.ts';
import { pageAfter } from '../page-after.ts';

const yearLong = 'public, max-age=31536000, immutable';
const noForm = { typed: '', ticks: new Set<string>() };

/** What the installed page is made of: its files, packed ahead; the worker that keeps them; the empty page; the manifest. */
export function clientRoutes(app: App, doors: Doors): void {
  for (const file of clientBuild.files) {
    app.get(addressOf(file), (c) => sendFile(c, file));
    onlyThese(app, addressOf(file), ['GET']);
  }
  app.get('/shell', (c) => c.html(shellPage({ dress, version: doors.version }), 200, { 'Content-Language': 'en' }));
  onlyThese(app, '/shell', ['GET']);
  app.get('/manifest.webmanifest', (c) =>
    c.body(manifest(), 200, { 'Content-Type': 'application/manifest+json', 'Cache-Control': 'no-cache' }),
  );
  onlyThese(app, '/manifest.webmanifest', ['GET']);
  app.get('/worker.js', (c) => {
    const worker = clientFile('worker.js');
    if (!worker) return c.notFound();
    const list = `self.kept=${JSON.stringify(keptFiles(doors))};\n`;
    const body = list + new TextDecoder().decode(bytesOf(worker));
    return c.body(body, 200, { 'Content-Type': 'text/javascript; charset=utf-8', 'Cache-Control': 'no-cache' });
  });
  onlyThese(app, '/worker.js', ['GET']);
}

function sendFile(c: Context<Env>, file: ClientFile): Response {
  const asked = c.req.header('Accept-Encoding') ?? '';
  const coding = asked.includes('br') && file.br ? 'br' : asked.includes('gzip') && file.gz ? 'gz' : undefined;
  return c.body(bytesOf(file, coding), 200, {
    'Content-Type': file.type.startsWith('text/') ? `${file.type}; charset=utf-8` : file.type,
    'Cache-Control': yearLong,
    ETag: `"${file.hash.slice(0, 16)}"`,
    Vary: 'Accept-Encoding',
    ...(coding ? { 'Content-Encoding': coding === 'gz' ? 'gzip' : coding } : {}),
  });
}

/** Everything the worker keeps, each with the hash of what it must be: a pair of which one half is newer is refused. */
function keptFiles(doors: Doors) {
  const pages = [
    { address: '/', hash: sha256(pageAfter(noForm, false, doors).html) },
    { address: '/shell', hash: sha256(shellPage({ dress, version: doors.version })) },
    { address: '/manifest.webmanifest', hash: sha256(manifest()) },
  ];
  const drawn = [stylesheet, quizStylesheet, icon].map(({ address, body }) => ({ address, hash: sha256(body) }));
  const built = clientBuild.files
    .filter(({ name }) => name !== 'worker.js')
    .map((file) => ({ address: addressOf(file), hash: file.hash }));
  const files = [...pages, ...drawn, ...built];
  return {
    version: sha256(files.map(({ hash }) => hash).join()).slice(0, 12),
    rules: doors.version,
    built: clientBuild.built,
    files,
  };
}

function manifest(): string {
  const iconFor = (name: string, sizes: string, purpose: string) => {
    const file = clientFile(name);
    return file ? [{ src: addressOf(file), sizes, type: file.type, purpose }] : [];
  };
  return JSON.stringify({
    id: '/',
    name: page.name,
    short_name: page.name,
    description: page.purpose,
    lang: 'en',
    start_url: '/',
    scope: '/',
    display: 'standalone',
    background_color: '#ffffff',
    theme_color: '#111111',
    icons: [
      ...iconFor('icon-192.png', '192x192', 'any'),
      ...iconFor('icon-512.png', '512x512', 'any'),
      ...iconFor('icon-cut-512.png', '512x512', 'maskable'),
      { src: icon.address, sizes: 'any', type: icon.type, purpose: 'any' },
    ],
  });
}
