import { readLog, type LogReading, type NewEvent } from "../../engine/record/chain.ts";
import { addToDevice, appendToDevice, eraseDevice, textsOnDevice } from "./device.ts";
import { type StoreTrouble, troubleOf } from "./trouble.ts";
import { addToVisit, appendToVisit, dropFromVisit, placeOfVisit, textsOfVisit } from "./visit.ts";

/**
 * The learner's record, wherever it is kept. Until somebody presses *Keep my work on this device* it lives in the tab and
 * goes with it. What the device refuses stays in the tab, so no answer depends on the device.
 */

export type Place = "device" | "tab" | "page";

export interface Kept {
  readonly place: Place;
  /** Why the device did not take it; null where it did, or was not asked. */
  readonly trouble: StoreTrouble | null;
}

export interface KeptRecord extends Kept {
  readonly reading: LogReading;
  readonly texts: readonly string[];
}

const FLAG = "small-knee-workbook:keeps";
const CHANNEL = "small-knee-workbook";

const flags = (): Storage | null => {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
};

/** True once the learner has asked this device to keep the record. */
export const isKeeping = (): boolean => {
  try {
    return flags()?.getItem(FLAG) === "yes";
  } catch {
    return false;
  }
};

const inVisit = (trouble: StoreTrouble | null = null): Kept => ({ place: placeOfVisit(), trouble });

const channel = (): BroadcastChannel | null => ("BroadcastChannel" in globalThis ? new BroadcastChannel(CHANNEL) : null);

/** Islands of this page hear each other here; a channel does not speak to its own page. */
const here = new EventTarget();

/** Tells the other tabs, and this page, that the record has grown or gone. */
const announce = (): void => {
  const sent = channel();
  sent?.postMessage("changed");
  sent?.close();
  here.dispatchEvent(new Event("changed"));
};

/** Calls back whenever the record changes, here or in another tab. Gives what ends it. */
export const onRecordChange = (changed: () => void): (() => void) => {
  const heard = channel();
  heard?.addEventListener("message", changed);
  here.addEventListener("changed", changed);
  return () => {
    heard?.close();
    here.removeEventListener("changed", changed);
  };
};

/** Brings what this visit still holds to the device. */
const settleVisit = async (): Promise<void> => {
  const waiting = textsOfVisit();
  if (waiting.length === 0) return;
  await addToDevice(waiting);
  dropFromVisit(waiting);
};

/** Adds one event. When this resolves the event is where `place` says; it never rejects. */
export const keepEvent = async (event: NewEvent): Promise<Kept> => {
  if (isKeeping()) {
    try {
      await settleVisit();
      await appendToDevice(event);
      announce();
      return { place: "device", trouble: null };
    } catch (error) {
      appendToVisit(event);
      announce();
      return inVisit(troubleOf(error));
    }
  }
  appendToVisit(event);
  announce();
  return inVisit();
};

/** The whole record: what the device holds and what this visit added. Damaged lines come with their sentence. */
export const readRecord = async (): Promise<KeptRecord> => {
  const recordOf = (texts: readonly string[], kept: Kept): KeptRecord => ({ ...kept, texts, reading: readLog(texts) });
  if (!isKeeping()) return recordOf(textsOfVisit(), inVisit());
  try {
    const onDevice = await textsOnDevice();
    return recordOf([...onDevice, ...textsOfVisit()], { place: "device", trouble: null });
  } catch (error) {
    return recordOf(textsOfVisit(), inVisit(troubleOf(error)));
  }
};

/** Starts to keep the record on this device, with all that this visit has answered. Nothing starts where it cannot. */
export const keepOnDevice = async (): Promise<Kept> => {
  try {
    const kept = flags();
    if (kept === null) return inVisit("blocked");
    kept.setItem(FLAG, "yes");
    await settleVisit();
    announce();
    return { place: "device", trouble: null };
  } catch (error) {
    flags()?.removeItem(FLAG);
    return inVisit(troubleOf(error));
  }
};

/** Asks the browser not to clear the record when room runs short. Null where it cannot be asked. */
export const askToStay = async (): Promise<boolean | null> => {
  if (!("storage" in navigator) || typeof navigator.storage?.persist !== "function") return null;
  return navigator.storage.persist().catch(() => null);
};

/** Adds lines from a file or another device, each once. Gives how many were new, and where they are now. */
export const bringLines = async (texts: readonly string[]): Promise<Kept & { readonly added: number }> => {
  if (isKeeping()) {
    try {
      const added = await addToDevice(texts);
      announce();
      return { place: "device", trouble: null, added };
    } catch (error) {
      return { ...inVisit(troubleOf(error)), added: 0 };
    }
  }
  const before = textsOfVisit().length;
  addToVisit(texts);
  announce();
  return { ...inVisit(), added: textsOfVisit().length - before };
};

/** Erases the record from this device and this tab, and stops keeping. */
export const eraseRecord = async (): Promise<Kept> => {
  const wasKeeping = isKeeping();
  dropFromVisit(textsOfVisit());
  try {
    if (wasKeeping) await eraseDevice();
    flags()?.removeItem(FLAG);
    announce();
    return inVisit();
  } catch (error) {
    return inVisit(troubleOf(error));
  }
};
