const { constants, readdirSync, readFileSync, statSync } = require('node:fs');

const watched = ['src', 'content', 'scripts', 'package.json', 'package-lock.json', 'tsconfig.json'];
const machine = `${process.version} ${process.platform} ${process.arch}`;
const quietly = { throwIfNoEntry: false };

const installStamp = (root) => `${root}/node_modules/.install-stamp`;
const buildStamp = (root) => `${root}/dist/.build-stamp`;

/** The stamp of the last install for this Node and this machine; undefined where there is none. */
function installed(root) {
  try {
    const stamp = JSON.parse(readFileSync(installStamp(root), 'utf8'));
    return stamp.machine === machine ? stamp : undefined;
  } catch {
    return undefined;
  }
}

/** True when the lock file has not been touched since the last install. */
function isInstalled(root) {
  const stamp = installed(root);
  const lockfile = stamp && statSync(`${root}/package-lock.json`, quietly);
  return lockfile !== undefined && stamp.size === lockfile.size && stamp.mtimeMs === lockfile.mtimeMs;
}

/** True when the last build was made from this signature. */
function isBuilt(root, signature) {
  try {
    return readFileSync(buildStamp(root), 'utf8') === signature;
  } catch {
    return false;
  }
}

/**
 * Count, size and age of all sources in one line: the same line means that nothing was added, removed or changed. It is
 * made at every start, so it is short of comforts: joining paths by hand halves its time.
 */
function signatureOf(root) {
  const seen = { node: process.version, entries: 0, bytes: 0, newest: 0, times: 0 };
  for (const name of watched) lookThrough(`${root}/${name}`, seen);
  return JSON.stringify(seen);
}

function lookThrough(path, seen) {
  const stats = statSync(path, quietly);
  if (!stats) return;
  const time = stats.mtimeMs;
  seen.entries += 1;
  seen.bytes += stats.size;
  if (time > seen.newest) seen.newest = time;
  // A sum of times as well: an older file put in place of another would not show in the newest one.
  seen.times = (seen.times + time) % 1e12;
  if ((stats.mode & constants.S_IFMT) === constants.S_IFDIR)
    for (const name of readdirSync(path)) lookThrough(`${path}/${name}`, seen);
}

module.exports = { machine, installStamp, buildStamp, installed, isInstalled, isBuilt, signatureOf };
