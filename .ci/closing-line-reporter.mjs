// Prints one line at the very end of a run: "N passed, N failed, N skipped".

/** How many tests ended in which way; a file that could not be run counts as one failure. */
export function countResults(modules, unhandledErrors = []) {
  const counts = { passed: 0, failed: unhandledErrors.length, skipped: 0 };
  for (const module of modules) {
    const before = counts.failed;
    for (const test of module.children.allTests()) {
      const { state } = test.result();
      counts[state === "pending" ? "failed" : state] += 1;
    }
    if (!module.ok() && counts.failed === before) counts.failed += 1;
  }
  return counts;
}

export default class ClosingLineReporter {
  #line = "";

  onTestRunEnd(modules, unhandledErrors) {
    const { passed, failed, skipped } = countResults(modules, unhandledErrors);
    this.#line = `${passed} passed, ${failed} failed, ${skipped} skipped`;
    // The default reporter writes its summary in the same turn and a later tick; the end of the process is after both.
    process.once("exit", () => process.stdout.write(`\n${this.#line}\n`));
  }
}
