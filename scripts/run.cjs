const { dirname } = require('node:path');
const { isBuilt, isInstalled, signatureOf } = require('./fresh.cjs');
const { runMain, sayFault } = require('./load.cjs');

const root = dirname(__dirname);
const bundles = { start: 'server', ask: 'ask' };
const [name, ...args] = process.argv.slice(2);

// The short way for what people wait for, with nothing to install or to build: without the loader of modules a start is
// about a tenth shorter. All else goes the long way.
if (Object.hasOwn(bundles, name ?? '') && isInstalled(root) && isBuilt(root, signatureOf(root))) {
  process.chdir(root);
  runMain(`${root}/dist/${bundles[name]}.cjs`, args).then((code) => {
    process.exitCode = code;
    // Its answer means that it has shut down: what may still be open must not keep the process.
    if (name === 'start') process.exit();
  }, sayFault);
} else {
  import('./run.mjs');
}
