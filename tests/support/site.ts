import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

export const dist = new URL("../../dist/", import.meta.url).pathname;

export interface Page {
  /** Address on the site: `/modules/`. */
  readonly path: string;
  readonly html: string;
}

const addressOf = (name: string): string => `/${name.replace(/index\.html$/, "")}`;

/** Every page of the built site. */
export const pages: readonly Page[] = readdirSync(dist, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".html"))
  .sort()
  .map((name) => ({ path: addressOf(name), html: readFileSync(join(dist, name), "utf8") }));

/** A page by its address. */
export const pageAt = (path: string): Page => {
  const page = pages.find((one) => one.path === path);
  if (!page) throw new Error(`The built site has no page ${path}`);
  return page;
};

/** Bytes of a text or file when sent compressed. */
export const gzipBytes = (content: string | Buffer): number => gzipSync(content, { level: 9 }).length;

/** A file of the built site. */
export const fileAt = (path: string): Buffer => readFileSync(join(dist, path.replace(/^\//, "")));

/** True where the built site has a file or a folder with a page at an address. */
export const exists = (address: string): boolean => {
  const path = join(dist, decodeURIComponent(address).replace(/^\//, ""));
  try {
    return statSync(path).isDirectory() ? statSync(join(path, "index.html")).isFile() : true;
  } catch {
    return false;
  }
};

/** Text of a page without markup, scripts and hidden definitions. */
export const textIn = (html: string): string =>
  html.replace(/<(script|style|noscript)\b[\s\S]*?<\/\1>/g, " ").replace(/<[^>]+>/g, " ").replace(/&#39;|&rsquo;/g, "’").replace(/\s+/g, " ");
