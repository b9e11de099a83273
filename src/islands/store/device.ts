import { deleteDB, type DBSchema, type IDBPDatabase, openDB } from "idb";
import { hashInFront, type Line, lineBehind, lineText, type NewEvent } from "../../engine/record/chain.ts";

/**
 * The log on the device: one line of text for each event, in the order in which they came. Lines are added and never
 * changed. Each write is one transaction, and the browser runs the writes of all tabs one after the other.
 */

interface LogSchema extends DBSchema {
  lines: { key: number; value: { readonly hash: string; readonly text: string } };
}

const NAME = "small-knee-workbook";
const LINES = "lines";
/** Step of the database's own form. A later edition raises it and adds what it needs; no edition removes lines. */
export const DATABASE_VERSION = 1;
const BUSY_MS = 4000;

let opened: Promise<IDBPDatabase<LogSchema>> | null = null;

const forgetOpened = (): void => {
  opened = null;
};

const openAnew = (): Promise<IDBPDatabase<LogSchema>> => {
  const request = openDB<LogSchema>(NAME, DATABASE_VERSION, {
    upgrade: (database) => {
      database.createObjectStore(LINES, { autoIncrement: true });
    },
    // Another tab upgrades or erases: this one lets go at once and opens again when it needs to.
    blocking: (_current, _blocked, event) => {
      (event.target as IDBDatabase).close();
      forgetOpened();
    },
    terminated: forgetOpened,
  });
  const tooLong = new Promise<never>((_, fail) => {
    setTimeout(() => fail(Object.assign(new Error("The record stayed closed"), { name: "BusyError" })), BUSY_MS);
  });
  return Promise.race([request, tooLong]);
};

const database = (): Promise<IDBPDatabase<LogSchema>> => {
  opened ??= openAnew().catch((error: unknown) => {
    forgetOpened();
    throw error;
  });
  return opened;
};

/** Runs a write while no other tab writes or erases; where the browser has no locks, the transaction alone keeps the order. */
const alone = <T>(write: () => Promise<T>): Promise<T> => {
  if (!("locks" in navigator)) return write();
  return navigator.locks.request(NAME, write) as Promise<T>;
};

/** Adds one event behind the last line; the answer is kept when this resolves. Rejects with the browser's own error. */
export const appendToDevice = (event: NewEvent): Promise<Line> =>
  alone(async () => {
    const transaction = (await database()).transaction(LINES, "readwrite", { durability: "strict" });
    const last = await transaction.store.openCursor(null, "prev");
    const line = lineBehind(last === null ? "" : hashInFront(last.value.text), event);
    await Promise.all([transaction.store.add({ hash: line.hash, text: lineText(line) }), transaction.done]);
    return line;
  });

/** Adds lines from elsewhere that are not here yet, all or none. Gives how many were new. */
export const addToDevice = (texts: readonly string[]): Promise<number> =>
  alone(async () => {
    const transaction = (await database()).transaction(LINES, "readwrite", { durability: "strict" });
    const here = new Set((await transaction.store.getAll()).map(({ text }) => text));
    const fresh = [...new Set(texts)].filter((text) => !here.has(text));
    await Promise.all([...fresh.map((text) => transaction.store.add({ hash: hashInFront(text), text })), transaction.done]);
    return fresh.length;
  });

/** Every line on the device, oldest first, whole or damaged. */
export const textsOnDevice = async (): Promise<readonly string[]> => (await (await database()).getAll(LINES)).map(({ text }) => text);

/** Removes the whole log from the device. */
export const eraseDevice = (): Promise<void> =>
  alone(async () => {
    (await opened?.catch(() => null))?.close();
    forgetOpened();
    await deleteDB(NAME);
  });
