import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, delimiter, dirname, join } from "node:path";
import { type Browser, chromium } from "playwright-core";

/**
 * Looks for a browser of the Chromium family: named, brought by npm, installed, or by the system's package manager. The
 * one that npm brings comes first, since it is the same everywhere and has no window of its own to paint; it takes half
 * the time of an installed one.
 */

const NAMES = ["google-chrome", "google-chrome-stable", "chromium", "chromium-browser", "microsoft-edge", "chrome"];
const PLACES = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];
const UNPACKED = "workbook-browser-";
const QUIET = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

export const NO_BROWSER = "No browser found for the page tests. Install Chrome, Edge or Chromium, or set CHROME_PATH to one.";

const inPath = (name: string): string | null =>
  (process.env["PATH"] ?? "").split(delimiter).map((folder) => join(folder, name)).find((path) => existsSync(path)) ?? null;

const installed = (): string | null => {
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
const unpacked = async (): Promise<string | null> => {
  const before = process.env["TMPDIR"];
  try {
    process.env["TMPDIR"] = mkdtempSync(join(tmpdir(), UNPACKED));
    process.env["AWS_EXECUTION_ENV"] ??= "AWS_Lambda_nodejs22.x";
    const { default: packed } = await import("@sparticuz/chromium");
    return await packed.executablePath();
  } catch {
    return null;
  } finally {
    if (before === undefined) Reflect.deleteProperty(process.env, "TMPDIR");
    else process.env["TMPDIR"] = before;
  }
};

const isRoot = (): boolean => process.getuid?.() === 0;

const fromSystem = async (): Promise<string | null> => {
  if (!isRoot() || !inPath("apt-get")) return null;
  try {
    execFileSync("apt-get", ["update", "-qq"], { stdio: "ignore" });
    execFileSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"], { stdio: "ignore" });
  } catch {
    return null;
  }
  return inPath("chromium");
};

export interface FoundBrowser {
  readonly browser: Browser;
  /** Where it lies, so that the next one need not be looked for: `CHROME_PATH` names it. */
  readonly path: string;
  /** Removes what was unpacked for it; an installed browser stays. */
  readonly discard: () => void;
}

const discard = (path: string): void => {
  const folder = dirname(path);
  if (basename(folder).startsWith(UNPACKED)) rmSync(folder, { recursive: true, force: true });
};

/** Starts the first browser that works and says where it lies; null where there is none. */
export const findBrowser = async (): Promise<FoundBrowser | null> => {
  for (const look of [async () => process.env["CHROME_PATH"] || null, unpacked, async () => installed(), fromSystem]) {
    const path = await look();
    const browser = path === null ? null : await tryLaunch(path, QUIET);
    if (path !== null && browser !== null) return { browser, path, discard: () => discard(path) };
  }
  return null;
};

/** Starts the first browser that works; null where there is none. */
export const launchBrowser = async (): Promise<Browser | null> => (await findBrowser())?.browser ?? null;
