import { createReadStream, existsSync, readFileSync, statSync } from "node:fs";
import { createServer, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize, resolve } from "node:path";
import { folder as home } from "../build/address.ts";
import { fail, wholeNumber, wordsOf } from "./words.ts";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8", ".css": "text/css; charset=utf-8", ".js": "text/javascript; charset=utf-8", ".svg": "image/svg+xml",
  ".json": "application/json", ".woff2": "font/woff2", ".txt": "text/plain; charset=utf-8", ".wasm": "application/wasm", ".png": "image/png",
};

/** File for an address: a folder gives its index page; null for what lies outside or is not there. */
const fileFor = (folder: string, address: string): string | null => {
  const path = normalize(join(folder, decodeURIComponent(address.split(/[?#]/)[0] ?? "/")));
  if (path !== folder && !path.startsWith(`${folder}/`)) return null;
  const file = existsSync(path) && statSync(path).isDirectory() ? join(path, "index.html") : path;
  return existsSync(file) ? file : null;
};

const send = (response: ServerResponse, file: string, status: number): void => {
  response.writeHead(status, { "Content-Type": TYPES[extname(file)] ?? "application/octet-stream" });
  createReadStream(file).pipe(response);
};

export interface Served {
  readonly address: string;
  readonly close: () => Promise<void>;
}

const folderOfSite = (): string => resolve(import.meta.dirname, "../../dist");

export const NOT_BUILT = 'There is no built site. Run "npm run build" first.';
export const isBuilt = (folder = folderOfSite()): boolean => existsSync(join(folder, "index.html"));

/** Serves the built site on this machine with its policy as a header; port 0 takes any free one. */
export const startServer = async (port = 0, folder = folderOfSite()): Promise<Served> => {
  if (!isBuilt(folder)) throw new Error(NOT_BUILT);
  const policy = readFileSync(join(folder, "policy.txt"), "utf8").trim();
  const server: Server = createServer((request, response) => {
    response.setHeader("Content-Security-Policy", policy);
    response.setHeader("X-Content-Type-Options", "nosniff");
    response.setHeader("Referrer-Policy", "no-referrer");
    const asked = request.url ?? "/";
    const file = fileFor(folder, asked.startsWith(`${home}/`) ? asked.slice(home.length) : asked);
    if (file) send(response, file, 200);
    else send(response, join(folder, "404.html"), 404);
  });
  await new Promise<void>((ready, failed) => {
    server.once("error", failed);
    server.listen(port, "127.0.0.1", ready);
  });
  const { port: taken } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${taken}${home}`,
    close: () => new Promise((closed) => {
      server.close(() => closed());
      server.closeAllConnections();
    }),
  };
};

/** The asked port, or any free one where somebody else has it. */
const startNear = async (port: number): Promise<Served> => {
  try {
    return await startServer(port);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EADDRINUSE") throw error;
    return startServer(0);
  }
};

const PORT = 4321;
const LAST_PORT = 65_535;

if (import.meta.main) {
  const typed = wordsOf({
    name: "serve",
    does: "Serves the built site on this machine and prints its address. Where the port is taken, any free one is used.",
    flags: { port: { says: "the port to ask for; PORT in the environment does the same", value: String(PORT) } },
  });
  if (!isBuilt()) fail(NOT_BUILT);
  const port = wholeNumber(typed, "port", { least: 0, most: LAST_PORT, otherwise: Number(process.env["PORT"] ?? PORT) });
  const served = await startNear(port);
  console.log(`Small Knee Workbook: ${served.address}/  (Ctrl-C ends it)`);
}
