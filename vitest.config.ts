import { defineConfig } from "vitest/config";

// Engine tests share one module graph (isolation off): they hold no state, and starting a
// fresh graph per file costs more than the tests themselves.
export default defineConfig({
  test: {
    // A processor left free is half of a small machine.
    maxWorkers: "100%",
    projects: [
      {
        test: {
          name: "engine",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/e2e/**"],
          setupFiles: ["tests/seed.ts"],
          isolate: false,
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: "page",
          include: ["tests/e2e/**/*.test.ts"],
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
