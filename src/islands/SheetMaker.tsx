import { useId, useState } from "react";
import type { RecordEvent } from "../engine/record/event.ts";
import { learnerState } from "../engine/record/learner-state.ts";
import { recordWordsOf } from "../facts/record-words.ts";
import { type CourseModule, courseView, objectivesOf, type Role } from "./course.ts";
import { numberFromFamilies, numberFromPlan, numberFromStand } from "./draw-sheet.ts";
import { today } from "./new-event.ts";
import { readRecord } from "./store/record.ts";
import { useRecord } from "./use-record.ts";

const words = recordWordsOf("en").sheet;
const ROLES: readonly Role[] = ["resident", "nurse", "director"];
const SOURCES = ["stand", "mixed", "entry", "module", "objective"] as const;
type From = (typeof SOURCES)[number];

interface Choice {
  /** Null until somebody has chosen. */
  readonly from: From | null;
  readonly role: Role;
  readonly which: string;
}

const fromStand = async (modules: readonly CourseModule[], role: Role): Promise<string | null> => {
  const own = modules.filter(({ core }) => core.includes(role));
  const { reading } = await readRecord();
  const state = learnerState(reading.lines, { ...courseView(modules), todayDay: today() });
  return numberFromStand({ modules: own, standings: state.objectives });
};

const numberOf = (modules: readonly CourseModule[], { from, role, which }: Choice & { readonly from: From }): Promise<string | null> | string | null => {
  if (from === "stand") return fromStand(modules, role);
  if (from === "mixed" || from === "entry") return numberFromPlan(from, role);
  const listed = from === "module" ? modules.find(({ code }) => code === which)?.objectives : objectivesOf(modules).filter(({ id }) => id === which);
  const chains = new Set(modules.flatMap((module) => module.chains.map(({ family }) => family)));
  return numberFromFamilies((listed ?? []).flatMap(({ families }) => families).filter((family) => !chains.has(family)));
};

const Pick = ({ legend, options, value, onPick }: { readonly legend: string; readonly options: readonly (readonly [string, string])[]; readonly value: string; readonly onPick: (id: string) => void }) => {
  const name = useId();
  return (
    <fieldset className="choices">
      <legend>{legend}</legend>
      {options.map(([id, text]) => <label className="choice" key={id}><input type="radio" name={name} value={id} checked={id === value} onChange={() => onPick(id)} />{text}</label>)}
    </fieldset>
  );
};

const STANDING: readonly RecordEvent["kind"][] = ["answered", "carried"];

/** What is offered first: who has answered nothing stands nowhere yet, and begins by seeing where. */
const useOffered = (): From => {
  const record = useRecord();
  return record?.reading.lines.some(({ event }) => STANDING.includes(event.kind)) ? "stand" : "entry";
};

interface MakerProps {
  readonly modules: readonly CourseModule[];
  readonly said: string;
  readonly onOpen: (number: string) => void;
}

/** Chooses what a sheet is drawn from, or takes a typed number. */
export const SheetMaker = ({ modules, said, onOpen }: MakerProps) => {
  const id = useId();
  const [choice, setChoice] = useState<Choice>({ from: null, role: "resident", which: "" });
  const offered = useOffered();
  const from = choice.from ?? offered;
  const [typed, setTyped] = useState("");
  const [nothing, setNothing] = useState("");
  const listed = from === "module" ? modules.map(({ code, title }) => [code, `${code} ${title}`] as const) : objectivesOf(modules).map((one) => [one.id, `${one.module} ${one.text}`] as const);
  const needsWhich = from === "module" || from === "objective";
  const which = listed.some(([one]) => one === choice.which) ? choice.which : (listed[0]?.[0] ?? "");
  const make = async (): Promise<void> => {
    const number = await numberOf(modules, { ...choice, from, which });
    setNothing(number === null ? words.nothing : "");
    if (number !== null) onOpen(number);
  };
  return (
    <div className="maker needs-script">
      <h2>{words.make}</h2>
      <Pick legend={words.what} options={SOURCES.map((one) => [one, words[one]] as const)} value={from} onPick={(picked) => setChoice({ ...choice, from: SOURCES.find((one) => one === picked) ?? offered })} />
      {needsWhich ? (
        <p className="which"><label htmlFor={`${id}w`}>{words.which}</label><select id={`${id}w`} value={which} onChange={(event) => setChoice({ ...choice, which: event.currentTarget.value })}>{listed.map(([one, text]) => <option key={one} value={one}>{text}</option>)}</select></p>
      ) : <Pick legend={words.forWhom} options={ROLES.map((role) => [role, words.roles[role]] as const)} value={choice.role} onPick={(role) => setChoice({ ...choice, role: ROLES.find((one) => one === role) ?? "resident" })} />}
      <div className="btns"><button type="button" className="main" onClick={() => void make()}>{words.drawIt}</button></div>
      <p role="status">{nothing}</p>
      <div className="typed">
        <label htmlFor={`${id}n`}>{words.typed}</label>
        <input id={`${id}n`} type="text" value={typed} autoComplete="off" autoCapitalize="characters" spellCheck={false} aria-describedby={`${id}s`} onChange={(event) => setTyped(event.currentTarget.value)} onKeyDown={(event) => { if (event.key === "Enter") onOpen(typed); }} />
        <button type="button" onClick={() => onOpen(typed)}>{words.open}</button>
      </div>
      <p role="status" id={`${id}s`}>{said}</p>
    </div>
  );
};
