import "fake-indexeddb/auto";
import { openDB } from "idb";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { lineText, readLog } from "../../src/engine/record/chain.ts";
import { bareEvent, chainOf } from "../support/events.ts";

/** The store against an IndexedDB in memory (fake-indexeddb); each test gets the store as a page that was just opened gets it. */

class TestStorage {
  readonly #kept = new Map<string, string>();
  getItem = (key: string): string | null => this.#kept.get(key) ?? null;
  setItem = (key: string, text: string): void => {
    this.#kept.set(key, text);
  };
  removeItem = (key: string): void => {
    this.#kept.delete(key);
  };
}

const openPage = async () => {
  vi.resetModules();
  return import("../../src/islands/store/record.ts");
};

const idsOf = (texts: readonly string[]): readonly string[] => readLog(texts).lines.map(({ event }) => event.id);

const onDevice = async <T>(work: (database: Awaited<ReturnType<typeof openDB>>) => Promise<T>): Promise<T> => {
  const database = await openDB("small-knee-workbook");
  const found = await work(database);
  database.close();
  return found;
};

describe("the record on the device", () => {
  beforeEach(() => {
    vi.stubGlobal("window", { localStorage: new TestStorage(), sessionStorage: new TestStorage() });
    vi.stubGlobal("navigator", {});
  });
  afterEach(async () => {
    const { eraseRecord } = await openPage();
    await eraseRecord();
    await new Promise<void>((done) => {
      const request = indexedDB.deleteDatabase("small-knee-workbook");
      request.onsuccess = () => done();
      request.onblocked = () => done();
    });
    vi.unstubAllGlobals();
  });

  it("starts nothing on the device before it is asked, and then brings what the visit holds", async () => {
    const store = await openPage();
    expect(await store.keepEvent(bareEvent(1))).toEqual({ place: "tab", trouble: null });
    expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain("small-knee-workbook");
    expect(await store.keepOnDevice()).toEqual({ place: "device", trouble: null });
    expect(await store.keepEvent(bareEvent(2))).toEqual({ place: "device", trouble: null });
    const again = await openPage();
    const record = await again.readRecord();
    expect([record.place, idsOf(record.texts), record.reading.firstDamaged]).toEqual(["device", ["e1", "e2"], null]);
  });

  it("chains each line to the one before, also when many are added at once", async () => {
    const store = await openPage();
    await store.keepOnDevice();
    await Promise.all(Array.from({ length: 40 }, (_, index) => store.keepEvent(bareEvent(index))));
    const { reading } = await store.readRecord();
    expect(reading.lines).toHaveLength(40);
    expect(reading.findings).toEqual([]);
    expect(reading.lines.slice(1).every(({ event }, index) => event.prev === reading.lines[index]?.hash)).toBe(true);
  });

  it("keeps a damaged line as it stands, says so, and counts the others", async () => {
    const store = await openPage();
    await store.keepOnDevice();
    for (const number of [1, 2, 3]) await store.keepEvent(bareEvent(number));
    await onDevice(async (database) => {
      const [, second] = await database.getAllKeys("lines");
      const kept = await database.get("lines", second ?? 0) as { readonly hash: string; readonly text: string };
      await database.put("lines", { ...kept, text: kept.text.replace('"right"', '"wrong"') }, second);
    });
    const { reading, texts } = await store.readRecord();
    expect(idsOf(texts)).toEqual(["e1", "e3"]);
    expect(reading.findings.map(({ line, fault, isAside }) => [line, fault, isAside])).toEqual([[2, "changed", true]]);
    expect(texts).toHaveLength(3);
    expect(await store.keepEvent(bareEvent(4))).toEqual({ place: "device", trouble: null });
  });

  it("leaves alone what a newer edition has written, and loses no answer", async () => {
    const store = await openPage();
    await store.keepOnDevice();
    await store.keepEvent(bareEvent(1));
    const newer = await openDB("small-knee-workbook", 99);
    newer.close();
    const later = await openPage();
    expect(await later.keepEvent(bareEvent(2))).toEqual({ place: "tab", trouble: "newer" });
    const record = await later.readRecord();
    expect([record.trouble, idsOf(record.texts)]).toEqual(["newer", ["e2"]]);
    expect(await onDevice((database) => database.count("lines"))).toBe(1);
  });

  it("keeps answers in the tab while the device has no room, and moves them when it has", async () => {
    const store = await openPage();
    await store.keepOnDevice();
    const add = vi.spyOn(IDBObjectStore.prototype, "add").mockImplementation(() => {
      throw new DOMException("no room", "QuotaExceededError");
    });
    expect(await store.keepEvent(bareEvent(1))).toEqual({ place: "tab", trouble: "full" });
    expect(idsOf((await store.readRecord()).texts)).toEqual(["e1"]);
    add.mockRestore();
    expect(await store.keepEvent(bareEvent(2))).toEqual({ place: "device", trouble: null });
    expect(window.sessionStorage.getItem("small-knee-workbook:visit")).toBeNull();
    expect(idsOf((await store.readRecord()).texts)).toEqual(["e1", "e2"]);
  });

  it("works on the page alone where the browser refuses all storage", async () => {
    vi.stubGlobal("window", {
      get localStorage() { throw new DOMException("refused", "SecurityError"); },
      get sessionStorage() { throw new DOMException("refused", "SecurityError"); },
    });
    const store = await openPage();
    expect(await store.keepEvent(bareEvent(1))).toEqual({ place: "page", trouble: null });
    expect((await store.keepOnDevice()).trouble).toBe("blocked");
    expect(idsOf((await store.readRecord()).texts)).toEqual(["e1"]);
  });

  it("brings lines from a file once, however often, and erases all", async () => {
    const store = await openPage();
    await store.keepOnDevice();
    await store.keepEvent(bareEvent(9));
    const file = chainOf([1, 2, 3].map((number) => bareEvent(number))).map(lineText);
    expect((await store.bringLines(file)).added).toBe(3);
    expect((await store.bringLines(file)).added).toBe(0);
    expect((await store.readRecord()).reading.lines).toHaveLength(4);
    expect(await store.eraseRecord()).toEqual({ place: "tab", trouble: null });
    expect((await store.readRecord()).texts).toEqual([]);
    expect(store.isKeeping()).toBe(false);
  });

  it("tells this page when the record changes", async () => {
    const store = await openPage();
    const changed = vi.fn();
    const end = store.onRecordChange(changed);
    await store.keepEvent(bareEvent(1));
    expect(changed).toHaveBeenCalledTimes(1);
    end();
    await store.keepEvent(bareEvent(2));
    expect(changed).toHaveBeenCalledTimes(1);
  });
});
