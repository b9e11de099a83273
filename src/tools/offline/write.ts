import { createHash } from "node:crypto";
import { readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

/** Made for a server or for other programs; no reader opens them. */
const LEFT_OUT = new Set(["policy.txt", "sitemap.xml", "offline-worker.js", "offline.json"]);

const filesIn = (dist: string): readonly string[] =>
  readdirSync(dist, { recursive: true, encoding: "utf8" })
    .map((name) => name.replaceAll("\\", "/"))
    .filter((name) => !LEFT_OUT.has(name) && statSync(join(dist, name)).isFile())
    .sort();

const VERSION_DIGITS = 16;

export interface OfflineCourse {
  /** Tells one build's files from another's. */
  readonly version: string;
  readonly files: number;
  readonly bytes: number;
}

/** Writes the program that keeps the course on a device, with its list of files, and a short note of how much that is. */
export const writeOffline = (dist: string): OfflineCourse => {
  const files = filesIn(dist);
  const hash = createHash("sha256");
  let bytes = 0;
  for (const file of files) {
    const content = readFileSync(join(dist, file));
    bytes += content.length;
    hash.update(`${file}\n`).update(createHash("sha256").update(content).digest());
  }
  const version = hash.digest("hex").slice(0, VERSION_DIGITS);
  const source = readFileSync(new URL("worker.ts", import.meta.url), "utf8");
  const program = ts.transpileModule(source, { compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext, removeComments: true } }).outputText;
  const course = { version, files: files.length, bytes };
  writeFileSync(join(dist, "offline.json"), `${JSON.stringify(course)}\n`);
  writeFileSync(join(dist, "offline-worker.js"), `const COURSE = ${JSON.stringify({ version, files: [...files, "offline.json"] })};\n${program}`);
  return course;
};
