import { useCallback, useEffect, useState } from "react";
import { listId, type TeachingList } from "../../engine/record/list-form.ts";
import type { CourseModule } from "../course.ts";
import { forgetDrafts } from "../store/draft.ts";
import { readRecord } from "../store/record.ts";
import { HandInPage } from "./HandInPage.tsx";
import { ListFirst } from "./ListFirst.tsx";
import { ListOpener } from "./ListOpener.tsx";
import type { Titles } from "./list-text.ts";
import { ListWork } from "./ListWork.tsx";
import { attemptsBegun, type Learner, recallLearner, rememberLearner } from "./sitting.ts";
import { useList } from "./use-list.ts";

interface OpenProps {
  readonly list: TeachingList;
  readonly modules: readonly CourseModule[];
  readonly titles: Titles;
}

interface Where {
  readonly learner: Learner;
  readonly attempt: number;
}

const HAND_IN = "hand-in";
const isAtHandIn = (): boolean => window.history.state === HAND_IN;

/** The page of the hand-in as a step of the browser's own way: *Back* leads from it to the list, and not away from both. */
const useHandIn = (): readonly [isHandingIn: boolean, go: () => void, back: () => void] => {
  const [isHandingIn, setHandingIn] = useState(false);
  useEffect(() => {
    const read = (): void => setHandingIn(isAtHandIn());
    read();
    window.addEventListener("popstate", read);
    return () => window.removeEventListener("popstate", read);
  }, []);
  const go = useCallback((): void => {
    window.history.pushState(HAND_IN, "");
    setHandingIn(true);
  }, []);
  return [isHandingIn, go, useCallback((): void => window.history.back(), [])];
};

/** The attempt that somebody is at: the last one begun, or the first. */
const attemptAt = async (list: TeachingList, learner: Learner): Promise<Where> => {
  const { reading } = await readRecord();
  return { learner, attempt: attemptsBegun(list, learner, reading.lines).at(-1) ?? 1 };
};

const OpenList = ({ list, modules, titles }: OpenProps) => {
  const [where, setWhere] = useState<Where | null>(null);
  const [isHandingIn, toHandIn, toList] = useHandIn();
  const enter = async (learner: Learner): Promise<void> => {
    rememberLearner(list, learner);
    setWhere(await attemptAt(list, learner));
  };
  const leave = (): void => {
    rememberLearner(list, null);
    // Whoever comes next may get the same sheet.
    forgetDrafts();
    setWhere(null);
  };
  useEffect(() => {
    const known = recallLearner(list);
    if (known !== null) attemptAt(list, known).then(setWhere, () => undefined);
  }, [list]);
  if (where === null) return <ListFirst list={list} titles={titles} onBegin={(learner) => void enter(learner)} />;
  if (isHandingIn) return <HandInPage list={list} learner={where.learner} onBack={toList} />;
  return <ListWork key={where.attempt} list={list} learner={where.learner} attempt={where.attempt} modules={modules} onHandIn={toHandIn} onNext={() => setWhere({ ...where, attempt: where.attempt + 1 })} onLeave={leave} />;
};

/** The learner's side of a teaching list: opened by link or code, first screen, work, hand-in. */
export const ListDesk = ({ modules, titles }: Omit<OpenProps, "list">) => {
  const { opened, open } = useList();
  if (opened !== null && "list" in opened) return <OpenList key={listId(opened.list)} list={opened.list} modules={modules} titles={titles} />;
  return <ListOpener said={opened?.said ?? ""} onOpen={open} hasWays />;
};
