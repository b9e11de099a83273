import { siteHref } from "../site-href.ts";

/** The course itself on this device: kept by a program beside the pages, only after a reader has asked for it. */

export interface CourseFacts {
  readonly version: string;
  readonly files: number;
  readonly bytes: number;
}

/** How keeping ended: whole, or stopped for want of a network or of room, with what had come. */
export type Kept = { readonly kept: string } | { readonly stopped: "network" | "room"; readonly done: number; readonly all: number };

type Fields = Readonly<Record<string, unknown>>;
const isFields = (value: unknown): value is Fields => typeof value === "object" && value !== null;

/** Browsers keep a site only where it came over https, or from this very machine. */
export const canKeepCourse = (): boolean => window.isSecureContext && "serviceWorker" in navigator && "caches" in window;

/** How much there is to keep; null where nobody can say. */
export const courseFacts = async (): Promise<CourseFacts | null> => {
  try {
    const value: unknown = await (await fetch(siteHref("/offline.json"))).json();
    if (!isFields(value)) return null;
    const { version, files, bytes } = value;
    return typeof version === "string" && typeof files === "number" && typeof bytes === "number" ? { version, files, bytes } : null;
  } catch {
    return null;
  }
};

const prefix = (): string => `small-knee-workbook:course:${siteHref("/")}:`;

const ownCaches = async (): Promise<readonly string[]> => (await caches.keys()).filter((name) => name.startsWith(prefix()));

/** The edition that is wholly kept here; null where none is. */
export const keptCourse = async (): Promise<string | null> => {
  for (const name of await ownCaches()) {
    if (await (await caches.open(name)).match(new URL(siteHref("/course-is-whole"), location.href).href)) return name.slice(prefix().length);
  }
  return null;
};

const whenActive = (worker: ServiceWorker | null): Promise<void> =>
  new Promise((done) => {
    if (worker === null || worker.state === "activated") return done();
    worker.addEventListener("statechange", () => {
      if (worker.state === "activated" || worker.state === "redundant") done();
    });
  });

/** The newest program, running. */
const workerNow = async (): Promise<ServiceWorker | null> => {
  const registration = await navigator.serviceWorker.register(siteHref("/offline-worker.js"), { scope: siteHref("/"), updateViaCache: "none" });
  await registration.update().catch(() => undefined);
  await whenActive(registration.installing ?? registration.waiting);
  return registration.active;
};

interface Come {
  readonly done: number;
  readonly all: number;
}

/** How far the program says it has come; null where a message says something else. */
const comeIn = (message: unknown): Come | null => {
  if (!isFields(message)) return null;
  const { done, all } = message;
  return typeof done === "number" && typeof all === "number" ? { done, all } : null;
};

/** How the program says it has ended; null while it goes on. */
const endIn = (message: unknown, come: Come): Kept | null => {
  if (!isFields(message)) return null;
  if (typeof message["kept"] === "string") return { kept: message["kept"] };
  if (typeof message["stopped"] !== "string") return null;
  return { stopped: message["stopped"] === "QuotaExceededError" ? "room" : "network", ...come };
};

/** Keeps the whole course on this device and says how far it has come. What has come stays, however it ends. */
export const keepCourse = async (onProgress: (done: number, all: number) => void): Promise<Kept> => {
  const worker = await workerNow();
  let come = { done: 0, all: 0 };
  if (worker === null) return { stopped: "network", ...come };
  const { port1, port2 } = new MessageChannel();
  return new Promise((ended) => {
    port1.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
      const end = endIn(data, come);
      if (end !== null) return ended(end);
      come = comeIn(data) ?? come;
      onProgress(come.done, come.all);
    });
    port1.start();
    worker.postMessage("keep", [port2]);
  });
};

/** Takes the course off this device, with the program that kept it. The reader's own record is not touched. */
export const dropCourse = async (): Promise<void> => {
  const registration = await navigator.serviceWorker.getRegistration(siteHref("/"));
  await registration?.unregister();
  for (const name of await ownCaches()) await caches.delete(name);
};
