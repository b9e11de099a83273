import { spawnSync } from "node:child_process";
import { join, resolve } from "node:path";

/** The long audit: every family of the bank, drafts too, drawn ten thousand times and held to the laws. */

const project = resolve(import.meta.dirname, "../..");
const { status } = spawnSync(process.execPath, [join(project, "node_modules/vitest/vitest.mjs"), "run", "--config", "tests/vitest.config.ts", "--project", "engine", "tests/laws"], {
  cwd: project,
  stdio: "inherit",
  env: { ...process.env, DRAWS: process.env["DRAWS"] ?? "10000" },
});
process.exit(status ?? 1);
