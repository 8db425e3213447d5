import { defineConfig } from "vitest/config";

// Engine tests share one module graph (isolation off): they hold no state, and starting a
// fresh graph per file costs more than the tests themselves. The browser tests run alone.
export default defineConfig({
  test: {
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
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
