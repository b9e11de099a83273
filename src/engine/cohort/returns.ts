import type { CompletionCode } from "../record/completion-code.ts";
import { shortList } from "../record/completion-code.ts";
import type { HandedSheet, HandIn } from "../record/hand-in-form.ts";
import { type Found, fromLetters, type HandInFault, readHandIns } from "../record/hand-in-read.ts";
import type { Route } from "../record/list-form.ts";

/** What came in at the returns desk, sorted by learner, before anything is marked again. Nothing that came is dropped. */

/** One file or one paste. */
export interface Arrival {
  /** Name of the file, or of the paste. */
  readonly name: string;
  readonly text: string;
}

/** A hand-in of this list that was read, each once, with every way it came. */
export interface Received {
  readonly handIn: HandIn;
  readonly sum: string;
  readonly routes: readonly Route[];
  readonly names: readonly string[];
  readonly isChanged: boolean;
}

/** Something that came and cannot be counted, and why. */
export interface Refused {
  readonly name: string;
  readonly route: Route | null;
  readonly learner: string | null;
  readonly fault: HandInFault | "other-list" | "attempt" | "slot";
  readonly missing: number;
}

/** A sheet of one attempt, as it will be marked. */
export interface Taken {
  readonly sheet: HandedSheet;
  readonly from: Received;
}

export interface Person {
  readonly learner: string;
  readonly received: readonly Received[];
  /** One sheet for each attempt, first attempt first. */
  readonly taken: readonly Taken[];
  /** Attempts that came with different answers in two hand-ins; the one that was handed in first is taken. */
  readonly conflicts: readonly number[];
  readonly codes: readonly CompletionCode[];
}

export interface Returns {
  readonly people: readonly Person[];
  readonly refused: readonly Refused[];
  /** How many copies were merged into one they equal. */
  readonly copies: number;
}

export interface DeskList {
  readonly id: string;
  readonly attempts: number;
  readonly questions: number;
}

/** One thing that was found, and where. */
export interface Named {
  readonly name: string;
  readonly found: Found;
}

/** What one file or paste holds; read once, however often the desk is laid out anew. */
export const readArrival = ({ name, text }: Arrival): readonly Named[] => readHandIns(text).map((found) => ({ name, found }));

interface PartSet {
  readonly name: string;
  readonly of: number;
  readonly letters: Map<number, string>;
}

/** Puts the parts of printed hand-ins together, from whatever pastes and pictures they came in. */
const joined = (all: readonly Named[]): readonly Named[] => {
  const sets = new Map<string, PartSet>();
  for (const { name, found } of all) {
    if (found.kind !== "part") continue;
    const key = `${found.sum} ${found.of}`;
    const set = sets.get(key) ?? { name, of: found.of, letters: new Map<number, string>() };
    set.letters.set(found.at, found.letters);
    sets.set(key, set);
  }
  return [...sets].map(([key, { name, of, letters }]): Named => {
    if (letters.size < of) return { name, found: { kind: "unread", route: "square", fault: "part-missing", learner: null, missing: of - letters.size } };
    const whole = Array.from({ length: of }, (_, index) => letters.get(index + 1) ?? "").join("");
    return { name, found: fromLetters(whole, { sum: key.split(" ")[0] ?? "", route: "square" }) };
  });
};

interface Tally {
  readonly received: Map<string, Received>;
  readonly codes: Map<string, readonly CompletionCode[]>;
  readonly refused: Refused[];
  copies: number;
}

type FoundOf<K extends Found["kind"]> = Extract<Found, { readonly kind: K }>;

const faultIn = ({ list, sheets }: HandIn, desk: DeskList): Refused["fault"] | null => {
  if (list !== desk.id) return "other-list";
  if (sheets.some(({ attempt }) => attempt > desk.attempts)) return "attempt";
  return sheets.some(({ answers }) => answers.some(({ slot }) => slot >= desk.questions)) ? "slot" : null;
};

const answersText = ({ answers }: HandedSheet): ReadonlySet<string> => new Set(answers.map(({ slot, response }) => JSON.stringify([slot, response])));
const isPartOf = (one: HandedSheet, other: HandedSheet): boolean => {
  const whole = answersText(other);
  return [...answersText(one)].every((answer) => whole.has(answer));
};

/** One sheet for each attempt. A later hand-in that only goes on with a sheet replaces the earlier; one that answers otherwise, or was changed after it was made, does not. */
const takenFrom = (received: readonly Received[]): Pick<Person, "taken" | "conflicts"> => {
  const byAttempt = new Map<number, Taken>();
  const conflicts = new Set<number>();
  const whole = received.filter(({ isChanged }) => !isChanged).toSorted((one, other) => (one.handIn.at < other.handIn.at ? -1 : 1));
  for (const from of [...whole, ...received.filter(({ isChanged }) => isChanged)]) {
    for (const sheet of from.handIn.sheets) {
      const before = byAttempt.get(sheet.attempt);
      const isMore = before === undefined || (!from.isChanged && isPartOf(before.sheet, sheet) && !isPartOf(sheet, before.sheet));
      if (isMore) byAttempt.set(sheet.attempt, { sheet, from });
      else if (!isPartOf(sheet, before.sheet)) conflicts.add(sheet.attempt);
    }
  }
  return { taken: [...byAttempt.values()].toSorted((one, other) => one.sheet.attempt - other.sheet.attempt), conflicts: [...conflicts].toSorted((one, other) => one - other) };
};

const takeHandIn = (tally: Tally, name: string, { desk, found: { handIn, sum, route, isChanged } }: { readonly desk: DeskList; readonly found: FoundOf<"hand-in"> }): void => {
  const fault = faultIn(handIn, desk);
  if (fault !== null) {
    tally.refused.push({ name, route, learner: handIn.learner, fault, missing: 0 });
    return;
  }
  const before = tally.received.get(sum);
  if (before !== undefined) tally.copies += 1;
  const routes = new Set([...(before?.routes ?? []), route]);
  // A whole copy clears a changed one: the content is the same, so only the sum had been damaged.
  tally.received.set(sum, { handIn, sum, routes: [...routes], names: [...(before?.names ?? []), name], isChanged: isChanged && (before?.isChanged ?? true) });
};

const takeCode = (tally: Tally, name: string, { desk, found: { learner, code } }: { readonly desk: DeskList; readonly found: FoundOf<"code"> }): void => {
  const before = tally.codes.get(learner) ?? [];
  if (code.list !== shortList(desk.id)) tally.refused.push({ name, route: "code", learner, fault: "other-list", missing: 0 });
  else if (before.some(({ attempt, right, unsafe }) => attempt === code.attempt && right === code.right && unsafe === code.unsafe)) tally.copies += 1;
  else tally.codes.set(learner, [...before, code]);
};

const tallied = (all: readonly Named[], desk: DeskList): Tally => {
  const tally: Tally = { received: new Map(), codes: new Map(), refused: [], copies: 0 };
  for (const { name, found } of all) {
    if (found.kind === "unread") tally.refused.push({ name, route: found.route, learner: found.learner, fault: found.fault, missing: found.missing });
    if (found.kind === "code") takeCode(tally, name, { desk, found });
    if (found.kind === "hand-in") takeHandIn(tally, name, { desk, found });
  }
  return tally;
};

/** Merges what is the same of all that came, and sorts it by learner code. */
export const gatherReturns = (all: readonly Named[], desk: DeskList): Returns => {
  const { received, codes, refused, copies } = tallied([...all, ...joined(all)], desk);
  const byLearner = new Map<string, Received[]>();
  for (const one of received.values()) byLearner.set(one.handIn.learner, [...(byLearner.get(one.handIn.learner) ?? []), one]);
  const learners = new Set([...byLearner.keys(), ...codes.keys()]);
  const people = [...learners].toSorted().map((learner): Person => {
    const own = byLearner.get(learner) ?? [];
    return { learner, received: own, ...takenFrom(own), codes: codes.get(learner) ?? [] };
  });
  return { people, refused, copies };
};
