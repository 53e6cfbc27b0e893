/** What all bundles are made with. */
export const shared = {
  bundle: true,
  format: 'esm',
  jsx: 'automatic',
  jsxImportSource: 'hono/jsx',
  logLevel: 'warning',
  legalComments: 'none',
};

export const forNode = {
  platform: 'node',
  target: 'node20',
  // Packages in CommonJS ask for Node's own modules with require, which an ES module has to be given.
  banner: {
    js: "import { createRequire as requireFrom } from 'node:module'; const require = requireFrom(import.meta.url);",
  },
};

export const forBrowser = { platform: 'browser', target: ['chrome100', 'firefox100', 'safari15.4'], minify: true };
