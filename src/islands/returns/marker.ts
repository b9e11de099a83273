import { loadFamily } from "../../bank/load.ts";
import type { Marker } from "../../engine/cohort/mark-sheet.ts";
import { drawItem } from "../../engine/question/draw.ts";
import type { Family } from "../../engine/question/family.ts";
import { gradeItem } from "../../engine/question/grade.ts";
import type { Item } from "../../engine/question/item.ts";
import type { TeachingList } from "../../engine/record/list-form.ts";
import { EDITIONS } from "../../facts/editions.ts";

interface Versions {
  readonly locked: Family | null;
  readonly newest: Family;
}

/** A family by the version that a list locks. Older versions stand in the whole catalogue, which is fetched only where one is needed. */
const versionsOf = async (id: string, version: number): Promise<Versions> => {
  const newest = await loadFamily(id);
  if (newest.version === version) return { locked: newest, newest };
  const { CATALOGUE } = await import("../../bank/catalogue.ts");
  const locked = CATALOGUE.find(([first]) => first?.id === id)?.find((family) => family.version === version) ?? null;
  return { locked, newest };
};

const known = (families: ReadonlyMap<string, Versions>, id: string): Versions => {
  const found = families.get(id);
  if (found === undefined) throw new RangeError(`id must be a family of the list, got ${id}`);
  return found;
};

/** Fetches every family of a list once; from then on its questions are drawn and graded without waiting. */
export const markerFor = async (list: TeachingList): Promise<Marker> => {
  const edition = EDITIONS.find((one) => one.edition === list.edition);
  const wanted = list.picks.flatMap(([place]) => edition?.families[place] ?? []);
  const loaded = await Promise.all(wanted.map(async ({ id, version }) => [id, await versionsOf(id, version)] as const));
  const families = new Map(loaded);
  const locked = (item: Item): Family => known(families, item.family).locked ?? known(families, item.family).newest;
  return {
    draw: ({ family, seed }) => {
      const own = families.get(family)?.locked ?? null;
      return own === null ? null : drawItem(own, { seed });
    },
    grade: (item, response) => gradeItem(locked(item), item, response),
    gradeNewest: (item, response) => {
      const { newest } = known(families, item.family);
      return newest.version === item.version ? null : gradeItem(newest, item, response);
    },
  };
};
