const shared = {
  bundle: true,
  jsx: 'automatic',
  jsxImportSource: 'hono/jsx',
  logLevel: 'warning',
  legalComments: 'none',
};

/**
 * CommonJS, since only that can be started from code that the engine has compiled before (`load.cjs`). Letters beyond
 * ASCII are escaped, so that the text is read and held at one byte a letter.
 */
export const forNode = {
  ...shared,
  platform: 'node',
  target: 'node20',
  format: 'cjs',
  charset: 'ascii',
  // Loaded from where they are installed, and only when a store is opened: one of them is machine code.
  external: ['kysely', 'libsql', 'pg'],
  define: {
    'import.meta.url': 'bundleUrl',
    'import.meta.filename': '__filename',
    'import.meta.dirname': '__dirname',
  },
  banner: { js: "const bundleUrl = require('node:url').pathToFileURL(__filename).href;" },
};

export const forBrowser = {
  ...shared,
  platform: 'browser',
  target: ['chrome100', 'firefox100', 'safari15.4'],
  minify: true,
};
