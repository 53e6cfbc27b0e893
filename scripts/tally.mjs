/**
 * Vitest reporter that counts, and hands the count to the launcher. A file that fails without a failed test of its own
 * (it does not load, a hook throws) and an error outside any test count as one failure each: the count never says 0 when
 * the run has failed.
 */
export default class Tally {
  onTestRunEnd(modules, unhandledErrors) {
    process.send?.(countOf(modules, unhandledErrors));
  }
}

/** Passed, failed and skipped of a run. */
export function countOf(modules, unhandledErrors = []) {
  const count = { passed: 0, failed: unhandledErrors.length, skipped: 0 };
  for (const module of modules) {
    const failedBefore = count.failed;
    for (const test of module.children.allTests()) {
      const { state } = test.result();
      count[state === 'pending' ? 'skipped' : state] += 1;
    }
    if (!module.ok() && count.failed === failedBefore) count.failed += 1;
  }
  return count;
}

/** The closing line of a run. */
export function closingLine({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}
