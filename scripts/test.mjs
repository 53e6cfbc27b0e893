import { ensureBuilt } from './build.mjs';
import { checkAll } from './check.mjs';
import { runNode } from './child.mjs';
import { closingLine } from './tally.mjs';

/**
 * `npm test`: build, format and lint, types, then every test. With words of its own (`npm test -- tests/calc`) they go to
 * Vitest and format, lint and types are left out. All stages run even when one fails, so that one run tells everything;
 * a failed stage counts as one failure in the closing line.
 */
export async function test(root, args) {
  const faults = (await ensureBuilt(root)) ? [] : ['build'];
  if (args.length === 0) faults.push(...(await checkAll(root)));

  let count;
  const code = await runNode(
    ['node_modules/vitest/vitest.mjs', 'run', '--reporter=default', '--reporter=./scripts/tally.mjs', ...args],
    {
      cwd: root,
      onMessage: (message) => {
        if (typeof message?.passed === 'number') count = message;
      },
    },
  );
  count ??= { passed: 0, failed: code === 0 ? 0 : 1, skipped: 0 };
  if (code !== 0 && count.failed === 0 && count.passed > 0) faults.push('test run');

  if (faults.length > 0) process.stdout.write(`\nFaults outside the tests: ${faults.join(', ')}\n`);
  count.failed += faults.length;
  process.stdout.write(`${closingLine(count)}\n`);
  return code === 0 && count.failed === 0 ? 0 : 1;
}
