// Tells scripts/test.mjs what vitest found, with the reason of every skip: its own JSON report leaves reasons out.
import { writeFileSync } from "node:fs";

export default class Report {
  onTestRunEnd(modules, unhandled) {
    const report = { passed: 0, failed: 0, skipped: [], broken: [] };
    for (const module of modules) {
      let failedHere = 0;
      for (const test of module.children.allTests()) {
        const { state, note } = test.result();
        if (state === "passed") report.passed++;
        else if (state === "failed") failedHere++;
        else report.skipped.push({ name: `${module.relativeModuleId}: ${test.fullName}`, why: note ?? "" });
      }
      report.failed += failedHere;
      // A file that could not be loaded, or a hook that failed, has no failed test to show for it.
      if (failedHere === 0 && module.state() === "failed") report.broken.push(module.relativeModuleId);
    }
    for (const error of unhandled) report.broken.push(String(error.message ?? error));
    writeFileSync(process.env.MARGENT_TEST_REPORT, JSON.stringify(report));
  }
}
