import { useEffect, useMemo, useState } from "react";
import { type Desk, type DeskRow, deskRow } from "../../engine/cohort/desk-row.ts";
import type { Marker } from "../../engine/cohort/mark-sheet.ts";
import { type Arrival, gatherReturns, type Named, readArrival, type Returns } from "../../engine/cohort/returns.ts";
import { listId, questionCount, type TeachingList } from "../../engine/record/list-form.ts";
import { EDITIONS } from "../../facts/editions.ts";
import { SITE } from "../../facts/site.ts";
import { markerFor } from "./marker.ts";

export interface DeskState {
  readonly returns: Returns;
  readonly rows: readonly DeskRow[];
  readonly done: number;
  readonly all: number;
  readonly take: (arrivals: readonly Arrival[]) => void;
  readonly clear: () => void;
}

/** The page answers to keys and pointers at least this often while it works. */
const SLICE_MS = 16;
const breath = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

/** Works through a list in slices, so that the page stays alive; stops where it is told that nobody waits any more. */
const inSlices = async <T>(things: readonly T[], { work, isGone }: { readonly work: (thing: T, index: number) => void; readonly isGone: () => boolean }): Promise<void> => {
  let since = performance.now();
  for (const [index, thing] of things.entries()) {
    if (isGone()) return;
    work(thing, index);
    if (performance.now() - since < SLICE_MS) continue;
    await breath();
    since = performance.now();
  }
};

/** Marks everybody again, in view: rows come one after the other, and `done` counts them. */
const useRows = (desk: Desk | null, returns: Returns) => {
  const [marked, setMarked] = useState<{ readonly rows: readonly DeskRow[]; readonly of: Returns | null }>({ rows: [], of: null });
  useEffect(() => {
    let isGone = false;
    if (desk === null) return;
    const rows: DeskRow[] = [];
    let shownAt = performance.now();
    const work = (person: Returns["people"][number]): void => {
      rows.push(deskRow(person, desk));
      if (performance.now() - shownAt < 100) return;
      shownAt = performance.now();
      setMarked({ rows: [...rows], of: null });
    };
    inSlices(returns.people, { work, isGone: () => isGone }).then(() => {
      if (!isGone) setMarked({ rows: [...rows], of: returns });
    }, () => undefined);
    return () => {
      isGone = true;
    };
  }, [desk, returns]);
  return marked;
};

/** The returns desk of one list: what came, and everybody marked again. All of it lives as long as the page. */
export const useDesk = (list: TeachingList): DeskState => {
  const [named, setNamed] = useState<readonly Named[]>([]);
  const [marker, setMarker] = useState<Marker | null>(null);
  useEffect(() => {
    markerFor(list).then(setMarker, () => setMarker(null));
  }, [list]);
  const desk = useMemo((): Desk | null => (marker === null ? null : { list, editions: EDITIONS, marker, edition: SITE.edition }), [list, marker]);
  const returns = useMemo(() => gatherReturns(named, { id: listId(list), attempts: list.attempts, questions: questionCount(list) }), [named, list]);
  const { rows } = useRows(desk, returns);
  const take = (arrivals: readonly Arrival[]): void => {
    const read: Named[] = [];
    inSlices(arrivals, { work: (arrival) => { read.push(...readArrival(arrival)); }, isGone: () => false }).then(() => setNamed((before) => [...before, ...read]), () => undefined);
  };
  return { returns, rows, done: Math.min(rows.length, returns.people.length), all: returns.people.length, take, clear: () => setNamed([]) };
};
