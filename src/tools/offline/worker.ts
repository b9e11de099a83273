/**
 * Runs in the browser beside the pages, once a reader has asked to keep the course, and not before. It goes to the network
 * first and to what is kept when there is none, so that a newer edition is never hidden by an older one. The build takes the
 * types out and puts the list of files in front; nothing is imported here.
 */

declare const COURSE: { readonly version: string; readonly files: readonly string[] };

interface Extendable {
  readonly waitUntil: (work: Promise<unknown>) => void;
}
interface Fetching extends Extendable {
  readonly request: Request;
  readonly respondWith: (answer: Promise<Response>) => void;
}
interface Asking extends Extendable {
  readonly data: unknown;
  readonly ports: readonly MessagePort[];
}
interface Scope {
  readonly registration: { readonly scope: string };
  readonly clients: { readonly claim: () => Promise<void> };
  readonly skipWaiting: () => Promise<void>;
  readonly addEventListener: (kind: string, listener: (event: never) => void) => void;
}

const scope = self as unknown as Scope;
const HOME = scope.registration.scope;
const PREFIX = `small-knee-workbook:course:${new URL(HOME).pathname}:`;
const AT_ONCE = 8;
/** A network that hangs is worse than none. */
const PATIENCE_MS = 4000;

/** The address of a file: a folder's page goes by the folder's name. */
const addressOf = (file: string): string => new URL(file.replace(/(^|\/)index\.html$/, "$1"), HOME).href;

const ownCaches = async (): Promise<readonly string[]> => (await caches.keys()).filter((name) => name.startsWith(PREFIX));

/** What is kept of an address, in this edition or an older one. */
const kept = async (request: Request): Promise<Response | null> => {
  const url = new URL(request.url);
  url.search = "";
  url.hash = "";
  // Only what is there is looked into: opening a copy by its name would make an empty one.
  const names = await ownCaches();
  const isNewest = (name: string): boolean => name === `${PREFIX}${COURSE.version}`;
  for (const name of [...names.filter(isNewest), ...names.filter((one) => !isNewest(one))]) {
    const hit = await (await caches.open(name)).match(url.href);
    if (hit) return hit;
  }
  return null;
};

const slow = (): Promise<null> => new Promise((done) => setTimeout(() => done(null), PATIENCE_MS));

/** Without a network an address that is not kept gives the site's own page about that, where a page was asked for. */
const lost = async (request: Request, error: unknown): Promise<Response> => {
  const page = request.mode === "navigate" ? await kept(new Request(addressOf("404.html"))) : null;
  if (page === null) throw error;
  return page;
};

const answer = async (request: Request): Promise<Response> => {
  const here = await kept(request);
  // A file whose name holds its hash never changes.
  if (here !== null && request.url.includes("/_astro/")) return here;
  const there = fetch(request);
  if (here === null) return there.catch((error: unknown) => lost(request, error));
  return (await Promise.race([there.catch(() => null), slow()])) ?? here;
};

const bring = async (cache: Cache, file: string): Promise<void> => {
  const address = addressOf(file);
  if (await cache.match(address)) return;
  const response = await fetch(address, { cache: "no-cache" });
  if (!response.ok) throw new Error(`${response.status} for ${file}`);
  await cache.put(address, response);
};

/** Brings every file that is not here yet, a few at once, and drops older editions only when this one is whole. */
const keep = async (port: MessagePort): Promise<void> => {
  const cache = await caches.open(`${PREFIX}${COURSE.version}`);
  let done = 0;
  for (let start = 0; start < COURSE.files.length; start += AT_ONCE) {
    const batch = COURSE.files.slice(start, start + AT_ONCE);
    await Promise.all(batch.map((file) => bring(cache, file)));
    done += batch.length;
    port.postMessage({ done, all: COURSE.files.length });
  }
  await cache.put(new URL("course-is-whole", HOME).href, new Response(COURSE.version));
  for (const name of await ownCaches()) if (name !== `${PREFIX}${COURSE.version}`) await caches.delete(name);
  port.postMessage({ kept: COURSE.version });
};

const onMessage = ({ data, ports: [port], waitUntil }: Asking): void => {
  if (data !== "keep" || port === undefined) return;
  waitUntil(keep(port).catch((error: unknown) => port.postMessage({ stopped: error instanceof Error ? error.name : "Error" })));
};

const isOurs = ({ method, url }: Request): boolean => method === "GET" && url.startsWith(HOME);

scope.addEventListener("install", (event: Extendable) => event.waitUntil(scope.skipWaiting()));
scope.addEventListener("activate", (event: Extendable) => event.waitUntil(scope.clients.claim()));
scope.addEventListener("message", (event: Asking) => onMessage({ data: event.data, ports: event.ports, waitUntil: (work) => event.waitUntil(work) }));
scope.addEventListener("fetch", (event: Fetching) => {
  if (isOurs(event.request)) event.respondWith(answer(event.request));
});
