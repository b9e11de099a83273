import { Worker } from "node:worker_threads";
import type { Report, Trial } from "./trial.ts";

export type Outcome = "killed" | "survived" | "broken";

export interface Result {
  readonly outcome: Outcome;
  /** What noticed the change, or what was wrong. */
  readonly why: string;
}

/** Why a change was noticed that made a loop endless. */
export const ENDLESS = "ran for ever";

const THREAD = new URL("trial.ts", import.meta.url);
const MOST_MEMORY_MB = 1024;

/** A thread keeps every module that it ever loaded; after this many trials another takes its place. */
const MOST_TRIALS = 100;

/** Few draws are enough to notice a changed engine. */
const FEW_DRAWS = "20";

const read = (report: Report): Result | null => {
  if ("began" in report) return null;
  if ("broken" in report) return { outcome: "broken", why: report.broken };
  return "failed" in report ? { outcome: "killed", why: report.failed } : { outcome: "survived", why: "" };
};

let trials = 0;

/** Makes trials one after the other. A test file that takes longer than its limit was caught in an endless loop, and one that eats the memory likewise: both notice the change. */
export class Bench {
  #thread: Worker | null = null;
  #made = 0;

  #ready(): Worker {
    if (this.#made >= MOST_TRIALS) this.close();
    this.#thread ??= new Worker(THREAD, { env: { ...process.env, DRAWS: FEW_DRAWS }, execArgv: ["--disable-warning=ExperimentalWarning"], resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY_MB } });
    this.#made += 1;
    return this.#thread;
  }

  close(): void {
    void this.#thread?.terminate();
    this.#thread = null;
    this.#made = 0;
  }

  try(trial: Omit<Trial, "id">, limitMs: (test: string) => number): Promise<Result> {
    const thread = this.#ready();
    trials += 1;
    const id = trials;
    return new Promise((done) => {
      let timer = setTimeout(() => undefined, 0);
      const end = (result: Result, isSpent: boolean): void => {
        clearTimeout(timer);
        thread.off("message", hear).off("error", fail);
        if (isSpent) this.close();
        done(result);
      };
      const fail = (error: unknown): void => end({ outcome: "killed", why: String(error) }, true);
      const hear = (report: Report): void => {
        const result = read(report);
        if (result) end(result, false);
        if (result) return;
        clearTimeout(timer);
        if ("began" in report) timer = setTimeout(() => end({ outcome: "killed", why: ENDLESS }, true), limitMs(report.began));
      };
      thread.on("message", hear).on("error", fail);
      thread.postMessage({ ...trial, id });
    });
  }
}
