import type { Arrival } from "../../engine/cohort/returns.ts";
import { MOST_CHARACTERS } from "../../engine/record/hand-in-read.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";

const words = listWordsOf("en").desk;
const MOST_FILES = 1000;
const MOST_PICTURE_BYTES = 20_000_000;

export interface ReadFiles {
  readonly arrivals: readonly Arrival[];
  /** A sentence for each file that could not be read. */
  readonly troubles: readonly string[];
}

type Reading = Arrival | { readonly trouble: string };

const fromPicture = async (file: File): Promise<Reading> => {
  if (file.size > MOST_PICTURE_BYTES) return { trouble: filled(words.picture, { name: file.name }) };
  const reader = await import("./read-square.ts").catch(() => null);
  if (reader === null) return { trouble: words.squareNot };
  const text = await reader.textInPicture(file);
  return text === null ? { trouble: filled(words.squareNone, { name: file.name }) } : { name: file.name, text };
};

const readOne = async (file: File): Promise<Reading> => {
  if (file.type.startsWith("image/")) return fromPicture(file);
  // A character takes at least one byte, so a file that is larger holds more than a hand-in can.
  if (file.size > 4 * MOST_CHARACTERS) return { trouble: filled(words.big, { name: file.name }) };
  return { name: file.name, text: await file.text() };
};

/** Reads chosen or dropped files one by one; one that cannot be read stops no other. */
export const readFiles = async (files: readonly File[]): Promise<ReadFiles> => {
  const readings: Reading[] = [];
  for (const file of files.slice(0, MOST_FILES)) {
    readings.push(await readOne(file).catch((): Reading => ({ trouble: filled(words.big, { name: file.name }) })));
  }
  const troubles = readings.flatMap((one) => ("trouble" in one ? [one.trouble] : []));
  return {
    arrivals: readings.flatMap((one) => ("trouble" in one ? [] : [one])),
    troubles: files.length > MOST_FILES ? [...troubles, filled(words.many, { most: String(MOST_FILES) })] : troubles,
  };
};
