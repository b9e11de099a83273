import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, delimiter, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
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
const FONT_LIST = "fonts.xml";
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

/** Where an unpacked browser lies with its libraries and fonts; null for an installed one, which has the system's. */
const kit = (path: string): string | null => (basename(dirname(path)).startsWith(UNPACKED) ? dirname(path) : null);

/** A machine without a desktop has neither these libraries nor any font, and a page without a single font crashes. */
const surroundings = (path: string): Record<string, string | undefined> => {
  const folder = kit(path);
  if (folder === null) return process.env;
  const libraries = [join(folder, "al2023", "lib"), process.env["LD_LIBRARY_PATH"]].filter(Boolean).join(delimiter);
  return { ...process.env, LD_LIBRARY_PATH: libraries, FONTCONFIG_FILE: join(folder, FONT_LIST) };
};

const tryLaunch = async (executablePath: string, args: readonly string[]): Promise<Browser | null> => {
  try {
    return await chromium.launch({ executablePath, args: [...args], env: surroundings(executablePath) });
  } catch {
    return null;
  }
};

const fontList = (folder: string): string =>
  `<?xml version="1.0"?>\n<fontconfig><dir>${join(folder, "fonts")}</dir><dir>/usr/share/fonts</dir><cachedir>${join(folder, "font-cache")}</cachedir></fontconfig>\n`;

const PARTS = ["chromium.br", "fonts.tar.br", "swiftshader.tar.br", "al2023.tar.br"];

/** The npm package unpacks into the temporary folder: a fresh one, since it would reuse any version it finds there. */
const unpacked = async (): Promise<string | null> => {
  const before = process.env["TMPDIR"];
  const folder = mkdtempSync(join(tmpdir(), UNPACKED));
  try {
    process.env["TMPDIR"] = folder;
    const { inflate } = await import("@sparticuz/chromium");
    const packs = join(dirname(fileURLToPath(import.meta.resolve("@sparticuz/chromium"))), "..", "bin");
    await Promise.all(PARTS.map((part) => inflate(join(packs, part))));
    writeFileSync(join(folder, FONT_LIST), fontList(folder));
    return join(folder, "chromium");
  } catch {
    rmSync(folder, { recursive: true, force: true });
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

/** Removes what was unpacked here; what `CHROME_PATH` names belongs to whoever set it. */
const discard = (path: string): void => {
  const folder = kit(path);
  if (folder !== null && path !== process.env["CHROME_PATH"]) rmSync(folder, { recursive: true, force: true });
};

/** Starts the first browser that works and says where it lies; null where there is none. */
export const findBrowser = async (): Promise<FoundBrowser | null> => {
  for (const look of [async () => process.env["CHROME_PATH"] || null, unpacked, async () => installed(), fromSystem]) {
    const path = await look();
    const browser = path === null ? null : await tryLaunch(path, QUIET);
    if (path !== null && browser !== null) return { browser, path, discard: () => discard(path) };
    if (path !== null) discard(path);
  }
  return null;
};

/** Starts the first browser that works and tidies up after it; null where there is none. */
export const launchBrowser = async (): Promise<Browser | null> => {
  const found = await findBrowser();
  found?.browser.on("disconnected", found.discard);
  return found?.browser ?? null;
};
