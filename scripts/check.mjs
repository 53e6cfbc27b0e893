import { runNode } from './child.mjs';

const tools = [
  { name: 'format and lint', script: 'node_modules/@biomejs/biome/bin/biome', args: ['check', '--max-diagnostics=50'] },
  { name: 'types', script: 'node_modules/typescript/bin/tsc', args: ['-p', '.'] },
  ...['page', 'worker'].map((name) => ({
    name: `types of the ${name}`,
    script: 'node_modules/typescript/bin/tsc',
    args: ['-p', `src/client/tsconfig.${name}.json`],
  })),
];

/** Runs format, lint and the type check; gives the names of those that found a fault. */
export async function checkAll(root) {
  const failed = [];
  for (const { name, script, args } of tools) {
    if ((await runNode([script, ...args], { cwd: root })) !== 0) failed.push(name);
  }
  return failed;
}

/** `npm run check`. */
export async function check(root) {
  const failed = await checkAll(root);
  process.stdout.write(
    failed.length === 0 ? 'Format, lint and types: ok\n' : `Faults found by: ${failed.join(', ')}\n`,
  );
  return failed.length === 0 ? 0 : 1;
}
