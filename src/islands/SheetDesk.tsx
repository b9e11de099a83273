import { useEffect, useState } from "react";
import { readSheetNumber, type Sheet, sheetOf } from "../engine/record/sheet-number.ts";
import { CODE_WORDS } from "../engine/record/words.ts";
import { EDITIONS } from "../facts/editions.ts";
import type { CourseModule } from "./course.ts";
import { SheetMaker } from "./SheetMaker.tsx";
import { SheetRun } from "./SheetRun.tsx";

const typedInAddress = (): string => {
  const typed = window.location.hash.slice(1);
  try {
    return decodeURIComponent(typed);
  } catch {
    return typed;
  }
};

type Opened = { readonly sheet: Sheet } | { readonly said: string };

/** The sheet that a typed number names, or a sentence that says what is wrong with it; an empty box is too short. */
const opened = (typed: string): Opened => {
  const number = readSheetNumber(typed);
  if ("fault" in number) return { said: CODE_WORDS.en[number.fault] };
  const sheet = sheetOf(number, EDITIONS);
  return "fault" in sheet ? { said: CODE_WORDS.en[sheet.fault] } : { sheet };
};

/** Draws a sheet, or opens the one that the address names; the number stays in the address, so a sheet can be come back to. */
export const SheetDesk = ({ modules }: { readonly modules: readonly CourseModule[] }) => {
  const [state, setState] = useState<Opened | null>(null);
  useEffect(() => {
    const read = (): void => setState(typedInAddress() === "" ? null : opened(typedInAddress()));
    read();
    window.addEventListener("hashchange", read);
    return () => window.removeEventListener("hashchange", read);
  }, []);
  const open = (number: string): void => {
    const next = opened(number);
    if ("sheet" in next) window.location.hash = next.sheet.number;
    setState(next);
  };
  if (state !== null && "sheet" in state) return <SheetRun key={state.sheet.number} sheet={state.sheet} modules={modules} onAnother={() => { window.location.hash = ""; }} />;
  return <SheetMaker modules={modules} said={state?.said ?? ""} onOpen={open} />;
};
