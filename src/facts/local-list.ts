import counts from "../../content/local/counts.json" with { type: "json" };
import limits from "../../content/local/limits.json" with { type: "json" };
import pack from "../../content/local/pack.json" with { type: "json" };
import waste from "../../content/local/waste.json" with { type: "json" };
import { COUNT_CLASSES, idOfThing, type LocalCount, type LocalList, type LocalThing, STREAMS } from "../engine/kit/local-list.ts";
import { sha256Hex } from "../engine/random/sha256.ts";

/** The four tables as an educator writes them. */
export interface LocalTables {
  readonly pack: {
    readonly hospital: string;
    readonly list: string;
    readonly things: readonly {
      readonly thing: string;
      readonly more: string;
      readonly pieces: number;
      readonly class: string;
      readonly shape: string;
      readonly stock: string;
      readonly size?: string;
      readonly otherSize?: string;
      readonly keep?: boolean;
    }[];
  };
  readonly counts: {
    readonly hospital: string;
    readonly classes: readonly { readonly class: string; readonly comesIn: number; readonly opened: readonly number[]; readonly added: readonly number[]; readonly handedOffAtMost: number }[];
    readonly capsAndLids: string;
  };
  readonly waste: { readonly hospital: string; readonly goes: readonly { readonly thing: string; readonly to: string }[] };
  readonly limits: { readonly hospital: string; readonly limits: readonly { readonly limit: string; readonly says: string; readonly value: number; readonly unit: string; readonly sheet: string }[] };
}

const HASH_DIGITS = 12;

/** One of the words that are allowed; the check names the others, with file and line. */
const oneOf = <T extends string>(list: readonly T[], word: string): T => {
  const found = list.find((one) => one === word);
  if (found === undefined) throw new RangeError(`word must be one of ${list.join(", ")}, got ${word}`);
  return found;
};

const thingOf = ({ size = "", otherSize = "", keep = false, ...rest }: LocalTables["pack"]["things"][number]): LocalThing => ({
  ...rest,
  id: idOfThing(rest.thing),
  class: oneOf(COUNT_CLASSES, rest.class),
  size,
  otherSize,
  keep,
});

const ends = ([least = 0, greatest = 0]: readonly number[]): readonly [number, number] => [least, greatest];
const countOf = ({ comesIn, opened, added, handedOffAtMost }: LocalTables["counts"]["classes"][number]): LocalCount => ({ comesIn, opened: ends(opened), added: ends(added), handedOffAtMost });

/** The list that four tables make; its hash changes with every word and number in them. */
export const localListOf = (tables: LocalTables): LocalList => ({
  hospital: tables.pack.hospital,
  hash: sha256Hex(JSON.stringify(tables)).slice(0, HASH_DIGITS),
  pack: tables.pack.things.map(thingOf),
  counts: Object.fromEntries(tables.counts.classes.map((row) => [row.class, countOf(row)])),
  capsCount: tables.counts.capsAndLids === "counted",
  waste: Object.fromEntries(tables.waste.goes.map(({ thing, to }) => [thing, oneOf(STREAMS, to)])),
  limits: Object.fromEntries(tables.limits.limits.map(({ limit, value, unit, sheet }) => [limit, { value, unit, sheet }])),
});

/** The list as it stands in `content/local`. */
export const LOCAL_TABLES: LocalTables = { pack, counts, waste, limits };
export const LOCAL_LIST: LocalList = localListOf(LOCAL_TABLES);
