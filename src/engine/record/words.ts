/** Sentences of the record, by language; what a learner reads when a line or a code cannot be used. */

export type RecordLanguage = "en";

/** What can be wrong with a line of a log. */
export type Fault = "unreadable" | "changed" | "newer" | "gap";

/** What can be wrong with a typed code. */
export type CodeFault = "empty" | "foreign-sign" | "short" | "length" | "check" | "other-kind" | "content" | "unknown-edition";

export const FAULT_WORDS: Readonly<Record<RecordLanguage, Readonly<Record<Fault, (line: number) => string>>>> = {
  en: {
    unreadable: (line) => `Line ${line} cannot be read. It is set aside; the other lines stand.`,
    changed: (line) => `Line ${line} is not as it was written. It is set aside and counts for nothing; the other lines stand.`,
    newer: (line) => `Line ${line} was written by a newer edition. It is kept as it is, and this edition does not count it.`,
    gap: (line) => `A line before line ${line} is missing. What is here still counts; what is missing does not.`,
  },
};

export const CODE_WORDS: Readonly<Record<RecordLanguage, Readonly<Record<CodeFault, string>>>> = {
  en: {
    empty: "Nothing was typed. Type the code as it is printed.",
    "foreign-sign": "The code holds a sign that no code has. Codes use digits and letters without I, L, O and U.",
    short: "The code is too short: some of its signs are missing. Compare it with the print, group by group.",
    length: "The code is too short or too long. Compare it with the print, group by group.",
    check: "One of the signs is wrong, or two changed places. Compare the code with the print, group by group.",
    "other-kind": "This is another kind of code. Each kind has a field of its own.",
    content: "The signs fit together but name nothing that this course has. Compare the code with the print.",
    "unknown-edition": "The code comes from a newer edition than this one. Open the newer edition, or ask for another code.",
  },
};

/** Said once where the clock of the device was set back between two events. */
export const SET_BACK_WORDS: Readonly<Record<RecordLanguage, string>> = {
  en: "The clock of this device was set back. No day is counted for the step back, and the days count on from there; check the date of the device if a return date looks odd.",
};
