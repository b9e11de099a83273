import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { type Browser, chromium } from "playwright-core";

/** Looks for a browser of the Chromium family: named, installed, brought by npm, or by the system's package manager. */

const NAMES = ["google-chrome", "google-chrome-stable", "chromium", "chromium-browser", "microsoft-edge", "chrome"];
const PLACES = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];
const QUIET = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

export const NO_BROWSER = "No browser found for the page tests. Install Chrome, Edge or Chromium, or set CHROME_PATH to one.";

const inPath = (name: string): string | null =>
  (process.env["PATH"] ?? "").split(delimiter).map((folder) => join(folder, name)).find((path) => existsSync(path)) ?? null;

const installed = (): string | null => {
  const named = process.env["CHROME_PATH"];
  if (named) return named;
  for (const name of NAMES) {
    const path = inPath(name);
    if (path) return path;
  }
  return PLACES.find((path) => existsSync(path)) ?? null;
};

const tryLaunch = async (executablePath: string, args: readonly string[]): Promise<Browser | null> => {
  try {
    return await chromium.launch({ executablePath, args: [...args] });
  } catch {
    return null;
  }
};

/** The npm package unpacks itself into the temporary folder: a fresh one, since it would reuse any version it finds there. */
const fromNpm = async (): Promise<Browser | null> => {
  try {
    process.env["TMPDIR"] = mkdtempSync(join(tmpdir(), "workbook-browser-"));
    process.env["AWS_EXECUTION_ENV"] ??= "AWS_Lambda_nodejs22.x";
    const { default: packed } = await import("@sparticuz/chromium");
    return await tryLaunch(await packed.executablePath(), ["--no-sandbox", "--headless=shell"]);
  } catch {
    return null;
  }
};

const isRoot = (): boolean => process.getuid?.() === 0;

const fromSystem = async (): Promise<Browser | null> => {
  if (!isRoot() || !inPath("apt-get")) return null;
  try {
    execFileSync("apt-get", ["update", "-qq"], { stdio: "ignore" });
    execFileSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"], { stdio: "ignore" });
  } catch {
    return null;
  }
  const path = inPath("chromium");
  return path ? tryLaunch(path, QUIET) : null;
};

/** Starts the first browser that works; null where there is none. */
export const launchBrowser = async (): Promise<Browser | null> => {
  const path = installed();
  const first = path ? await tryLaunch(path, QUIET) : null;
  return first ?? (await fromNpm()) ?? (await fromSystem());
};
