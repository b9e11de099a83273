import { readFileSync } from "node:fs";
import { registerHooks, stripTypeScriptTypes } from "node:module";
import { fileURLToPath } from "node:url";
import { parentPort } from "node:worker_threads";
import { type Change, changed } from "./changes.ts";

/** A thread that makes one trial after another. Each trial loads the project's own modules anew, one of them changed, and runs test files until a check fails. Nothing is written to disk. */

export interface Trial {
  /** Tells the modules of this trial from those of all others. */
  readonly id: number;
  /** Test files as URLs, in the order in which they are tried. */
  readonly tests: readonly string[];
  /** The changed file as URL; absent for the trial of the source as it stands. */
  readonly file?: string;
  readonly change?: Change;
}

/** `began` before each test file, then one of the others. */
export type Report = { readonly began: string } | { readonly failed: string } | { readonly broken: string } | { readonly survived: true };

const project = new URL("../../../", import.meta.url).href;
const packages = new URL("node_modules/", project).href;
const collector = new URL("collect.ts", import.meta.url).href;
const port = parentPort;
const tell = (report: Report): void => port?.postMessage(report);

let trial: Trial = { id: 0, tests: [] };

const isOwn = (url: string): boolean => url.startsWith(project) && !url.startsWith(packages) && url !== collector && url.endsWith(".ts");

const stripped = new Map<string, string>();

/** JavaScript of a file as it stands, kept from trial to trial. */
const plain = (url: string): string => {
  const before = stripped.get(url);
  if (before !== undefined) return before;
  const text = stripTypeScriptTypes(readFileSync(fileURLToPath(url), "utf8"));
  stripped.set(url, text);
  return text;
};

const sourceOf = (url: string): string =>
  url === trial.file && trial.change ? stripTypeScriptTypes(changed(readFileSync(fileURLToPath(url), "utf8"), trial.change)) : plain(url);

registerHooks({
  resolve: (specifier, context, next) => {
    if (specifier === "vitest" && context.parentURL !== collector) return { url: collector, shortCircuit: true };
    const found = next(specifier, context);
    return trial.id > 0 && isOwn(found.url) ? { ...found, url: `${found.url}?trial=${trial.id}` } : found;
  },
  load: (url, context, next) => {
    const [file = "", query] = url.split("?trial=");
    return query === undefined ? next(url, context) : { format: "module", source: sourceOf(file), shortCircuit: true };
  },
});

const collect = (await import(collector)) as typeof import("./collect.ts");

const firstFailure = async (path: string): Promise<Report | null> => {
  tell({ began: path });
  collect.taken();
  try {
    await import(path);
  } catch (error) {
    return error instanceof SyntaxError ? { broken: String(error) } : { failed: `${path}: ${String(error)}` };
  }
  for (const { title, run } of collect.taken()) {
    try {
      await run();
    } catch (error) {
      return { failed: `${path}: ${title}: ${String(error)}` };
    }
  }
  return null;
};

const outcome = async (): Promise<Report> => {
  for (const path of trial.tests) {
    const failure = await firstFailure(path);
    if (failure) return failure;
  }
  return { survived: true };
};

port?.on("message", (next: Trial) => {
  trial = next;
  void outcome().then(tell);
});
