/**
 * Keeps the page on the phone, and does nothing else: it never answers a question. The server puts the list of files in front
 * of this text, each with its hash, so that a set of which one half is newer is refused whole and the old one goes on.
 */
interface KeptList {
  readonly version: string;
  readonly files: readonly { readonly address: string; readonly hash: string }[];
}

const worker = self as unknown as ServiceWorkerGlobalScope & { readonly kept: KeptList };
const { version, files } = worker.kept;
const prefix = 'bladehand-';
const here = prefix + version;
/** Pages that are the same for everybody, or that only this phone can make. */
const own = /^\/(?:cards|rules|words|sheet)(?:\/|$)/;

/** Pages of a job that the phone can make too. */
const job = /^\/job(?:$|\/[^/]+(?:$|\/season$|\/day\/))/;
const patience = 4000;

worker.addEventListener('install', (event) => event.waitUntil(fetchAll()));

async function fetchAll(): Promise<void> {
  const before = await Promise.all((await names()).map((name) => caches.open(name)));
  const fresh = await caches.open(here);
  try {
    await Promise.all(
      files.map(async ({ address, hash }) => {
        const held = await firstOf(before, address);
        const same = held && (await hashOf(held)) === hash ? held : undefined;
        const response = same ?? (await fetch(address, { cache: cacheFor(address) }));
        if (!response.ok || (await hashOf(response)) !== hash)
          throw new Error(`${address} is not of version ${version}`);
        await fresh.put(address, response);
      }),
    );
  } catch (fault) {
    await caches.delete(here);
    throw fault;
  }
}

/** A file with a hash in its name cannot have changed; a page can. */
const cacheFor = (address: string): RequestCache => (address.startsWith('/assets/') ? 'default' : 'no-cache');

async function firstOf(some: readonly Cache[], address: string): Promise<Response | undefined> {
  for (const each of some) {
    const found = await each.match(address);
    if (found) return found;
  }
  return undefined;
}

async function hashOf(response: Response): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', await response.clone().arrayBuffer());
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Our caches but the one being filled, oldest first. */
async function names(): Promise<string[]> {
  return (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== here);
}

// The set before this one stays: a page that is still open may yet fetch a part of it.
worker.addEventListener('activate', (event) =>
  event.waitUntil(
    names().then(async (old) => {
      await Promise.all(old.slice(0, -1).map((name) => caches.delete(name)));
      await worker.clients.claim();
    }),
  ),
);

// Only when the reader says so: never in the middle of a job.
worker.addEventListener('message', ({ data }) => {
  if (data === 'use the new one') void worker.skipWaiting();
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const { pathname, origin } = new URL(request.url);
  if (origin !== location.origin) return;
  if (request.mode === 'navigate') {
    if (request.method === 'POST' && (pathname === '/' || pathname === '/job')) event.respondWith(sent(request));
    else if (request.method === 'GET') event.respondWith(pageAt(request, pathname));
  } else if (request.method === 'GET' && pathname.startsWith('/assets/')) {
    event.respondWith(assetAt(request));
  }
});

/** The page to ask on and those that the phone fills by itself are kept here, so that they open at once; others come from the server while there is signal. */
async function pageAt(request: Request, pathname: string): Promise<Response> {
  const cache = await caches.open(here);
  const held =
    pathname === '/' || own.test(pathname) ? await cache.match(pathname === '/' ? '/' : '/shell') : undefined;
  if (held) return held;
  try {
    // A job lies on the phone: a signal that does not come in time must not hold up who has it there.
    if (job.test(pathname)) return await inTime(fetch(request));
    return await fetch(request);
  } catch (fault) {
    const shell = await cache.match('/shell');
    if (shell) return shell;
    throw fault;
  }
}

const inTime = (answer: Promise<Response>): Promise<Response> =>
  new Promise((resolve, reject) => {
    setTimeout(() => reject(new Error('no answer in time')), patience);
    answer.then(resolve, reject);
  });

async function assetAt(request: Request): Promise<Response> {
  return (await caches.match(request)) ?? fetch(request);
}

/** A question sent as a form where there is no signal is not lost: the page kept here asks it. */
async function sent(request: Request): Promise<Response> {
  const copy = request.clone();
  try {
    return await fetch(request);
  } catch {
    // The talk lies on this phone: it is taken up from there.
    if (new URL(request.url).pathname === '/job') return Response.redirect('/job?talk', 303);
    const fields = await copy.formData();
    const question = String(fields.get('send') ?? fields.get('question') ?? '');
    return Response.redirect(question ? `/?q=${encodeURIComponent(question)}` : '/', 303);
  }
}

// A module, so that its names are its own.
export {};
