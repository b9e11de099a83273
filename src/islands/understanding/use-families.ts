import { useEffect, useState } from "react";
import { loadFamily } from "../../bank/load.ts";
import type { Paper } from "../../engine/cohort/paper.ts";
import type { Family } from "../../engine/question/family.ts";

export type Families = ReadonlyMap<string, Family>;

const NONE: Families = new Map();

const loaded = async (ids: readonly string[]): Promise<Families> => {
  const found = await Promise.all(ids.map(async (id) => {
    try {
      return [[id, await loadFamily(id)] as const];
    } catch {
      return [];
    }
  }));
  return new Map(found.flat());
};

/** The families that the papers name, fetched when they are first needed; one that this site does not have is left out. */
export const useFamilies = (papers: readonly Paper[]): Families => {
  const [families, setFamilies] = useState<Families>(NONE);
  const key = [...new Set(papers.flatMap(({ marks }) => marks.map(({ family }) => family)))].sort().join(" ");
  useEffect(() => {
    let isWanted = true;
    const fetchAll = async (): Promise<void> => {
      const found = await loaded(key === "" ? [] : key.split(" "));
      if (isWanted) setFamilies(found);
    };
    void fetchAll();
    return () => {
      isWanted = false;
    };
  }, [key]);
  return families;
};
