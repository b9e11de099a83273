import { spawn } from "node:child_process";
import { resolve } from "node:path";

const project = resolve(import.meta.dirname, "../..");

/** Runs a program with the Node that runs this one, showing what it prints; true where it ended well. */
export const runNode = (words: readonly string[], env: Readonly<Record<string, string>> = {}): Promise<boolean> =>
  new Promise((done) => {
    const child = spawn(process.execPath, words, { cwd: project, stdio: "inherit", env: { ...process.env, ...env } });
    child.on("close", (code) => done(code === 0));
  });
