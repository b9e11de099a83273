import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { helpText, readWords, type Tool } from "../../src/tools/words.ts";

const project = resolve(import.meta.dirname, "../..");

const TOOL: Tool = {
  name: "look",
  does: "Looks at one thing.",
  words: ["thing"],
  flags: { draws: { says: "how many", value: "50" }, text: { says: "prints it here" } },
  example: "npm run look -- window",
};

const faultOf = (...typed: readonly string[]): string => {
  const read = readWords(TOOL, typed);
  return "fault" in read ? read.fault : "";
};

describe("the words of a tool", () => {
  test("are read in either form of a flag", () => {
    for (const typed of [["window", "--draws=7", "--text"], ["--text", "--draws", "7", "window"]]) {
      const read = readWords(TOOL, typed);
      expect(read).toMatchObject({ words: ["window"], values: { draws: "7" } });
      expect("has" in read && [read.has("text"), read.has("draws"), read.has("out")]).toEqual([true, true, false]);
    }
  });

  test.each([
    [["--draw=7"], "--draw is no flag of this tool; the nearest is --draws=50."],
    [["--elephant"], "--elephant is no flag of this tool; it takes --draws=50, --text."],
    [["--draws"], "--draws needs a value, as in --draws=50."],
    [["--draws="], "--draws needs a value, as in --draws=50."],
    [["--text=yes"], '--text stands alone, without "yes".'],
    [["window", "door"], '"door" is a word too many; this tool takes 1: thing.'],
  ])("%j are answered with what is wrong and what is right", (typed, fault) => {
    expect(faultOf(...typed)).toBe(fault);
  });

  test("ask for help wherever --help stands, and the help names every flag", () => {
    expect(readWords(TOOL, ["window", "--help", "--elephant"])).toEqual({ help: helpText(TOOL) });
    expect(helpText(TOOL).split("\n")).toEqual(["npm run look -- [thing] [flags]", "Looks at one thing.", "  --draws=50  how many", "  --text      prints it here", "For example: npm run look -- window"]);
  });
});

const scripts = (JSON.parse(readFileSync(resolve(project, "package.json"), "utf8")) as { readonly scripts: Readonly<Record<string, string>> }).scripts;
const tools = Object.entries(scripts).flatMap(([name, line]) => {
  const path = /node ((?:src\/tools|tests\/support)\/[\w-]+\.ts)$/.exec(line)?.[1];
  return path === undefined ? [] : [[name, path] as const];
});

const ran = (path: string, word: string): Promise<{ readonly out: string; readonly err: string; readonly code: number | null }> =>
  new Promise((done) => {
    const child = spawn(process.execPath, [path, word], { cwd: project });
    const texts = { out: "", err: "" };
    child.stdout.on("data", (text) => (texts.out += String(text)));
    child.stderr.on("data", (text) => (texts.err += String(text)));
    child.on("close", (code) => done({ ...texts, code }));
  });

/** Every tool of package.json loads what it needs before it reads its words; two cores and other work take their time. */
const EVERY_TOOL_MS = 120_000;

describe("every tool of package.json", () => {
  test("are more than a few", () => expect(tools.length).toBeGreaterThan(14));

  test("says what is wrong with a flag that it does not take, with its help and without a trace, and does nothing", async () => {
    const answers = await Promise.all(tools.map(async ([name, path]) => ({ name, ...(await ran(path, "--elephant")) })));
    expect(answers.filter(({ code, out }) => code !== 1 || out !== "").map(({ name }) => name)).toEqual([]);
    expect(answers.filter(({ err }) => !/^--elephant.*Nothing was done\.\n\nnpm run [a-z:-]+/.test(err) || err.includes("\n    at ")).map(({ name, err }) => `${name}: ${err.slice(0, 200)}`)).toEqual([]);
    expect(answers.filter(({ name, err }) => !err.includes(`\nnpm run ${name}`)).map(({ name }) => name)).toEqual([]);
  }, EVERY_TOOL_MS);
});
