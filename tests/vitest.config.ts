import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

export default defineConfig({
  root: fileURLToPath(new URL("..", import.meta.url)),
  test: {
    // vitest leaves one core free, which on two is half of the machine
    maxWorkers: "100%",
    benchmark: { include: ["tests/bench/**/*.bench.ts"] },
    projects: [
      {
        extends: true,
        test: {
          name: "rooms",
          include: ["tests/**/*.test.{ts,tsx}"],
          exclude: ["tests/journeys/**"],
          // nothing below the commands keeps a state, so files may share what they have loaded
          isolate: false,
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: "journeys",
          include: ["tests/journeys/**/*.test.ts"],
          benchmark: { include: [] },
          globalSetup: "tests/journeys/build.ts",
          testTimeout: 60_000,
        },
      },
    ],
  },
});
