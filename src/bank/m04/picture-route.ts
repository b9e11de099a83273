import type { NameFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import { CHILDREN, HOSPITALS } from "../m01/common.ts";

interface Request {
  readonly text: string;
  readonly route: "archive" | "paper" | "nowhere";
  readonly copy: "not-needed" | "nameless" | "consent";
  /** The shortcut that somebody in a hurry takes. */
  readonly hurry: "phone" | "stick";
}

/** What is asked for, and what the printed rule says to it. */
const REQUESTS: Readonly<Record<string, Request>> = {
  record: { text: "The pictures of the operation are to be kept with the notes; the archive answers.", route: "archive", copy: "not-needed", hurry: "stick" },
  "archive-down": { text: "The archive does not answer tonight, and the pictures of the operation must not get lost.", route: "paper", copy: "not-needed", hurry: "phone" },
  colleague: { text: "A colleague at home is to advise on one picture; the archive can be opened from there.", route: "archive", copy: "not-needed", hurry: "phone" },
  lecture: { text: "One picture is wanted for a teaching round inside the hospital; the archive answers.", route: "archive", copy: "nameless", hurry: "stick" },
  paper: { text: "One picture is wanted for a printed article; the archive answers.", route: "archive", copy: "consent", hurry: "stick" },
  parents: { text: "The parents would like to see the tear; the archive answers, and has a screen on the ward.", route: "archive", copy: "not-needed", hurry: "phone" },
  spoiled: { text: "A picture shows only the drape and a passing face; nothing of it belongs to the notes.", route: "nowhere", copy: "not-needed", hurry: "phone" },
  "outside-talk": { text: "One picture is wanted for a talk at another hospital; the archive answers.", route: "archive", copy: "consent", hurry: "stick" },
};

const asked = (draw: Pick<Draw, "about">): Request => REQUESTS[draw.about["request"] ?? ""] ?? (REQUESTS["record"] as Request);
const truth = (draw: Pick<Draw, "about">): Readonly<Record<string, string>> => ({ route: asked(draw).route, copy: asked(draw).copy });
const rule = (hospital: string): string =>
  `The rule at ${hospital}: pictures go to the archive; while it is down they are printed into the paper record; what shows nothing of the operation is not kept. Copies for teaching inside the house go without a name; copies that leave it need written consent. Own phones and plain memory sticks are not used.`;

/** 04g: where a patient's picture goes, by the printed local rule. */
export const pictureRoute: NameFamily = {
  kind: "name",
  id: "picture-route",
  code: "04g",
  module: "M04",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m04-picture"],
  reads: [],
  sources: [],
  cautions: ["C11"],
  givens: [],
  attributes: [
    { id: "route", options: ["archive", "paper", "nowhere", "phone", "stick"] },
    { id: "copy", options: ["not-needed", "nameless", "consent"] },
  ],
  draw: (chance) => ({ givens: {}, about: { request: chance.pick(Object.keys(REQUESTS)), hospital: chance.pick(HOSPITALS), child: chance.pick(CHILDREN) } }),
  truth,
  slips: [
    { id: "own-phone", gives: (draw) => (asked(draw).hurry === "phone" ? { ...truth(draw), route: "phone" } : null) },
    { id: "plain-stick", gives: (draw) => (asked(draw).hurry === "stick" ? { ...truth(draw), route: "stick" } : null) },
    { id: "name-off-is-enough", gives: (draw) => (asked(draw).copy === "consent" ? { ...truth(draw), copy: "nameless" } : null) },
    { id: "inside-is-free", gives: (draw) => (asked(draw).copy === "nameless" ? { ...truth(draw), copy: "not-needed" } : null) },
    { id: "consent-for-the-notes", gives: (draw) => (asked(draw).copy === "not-needed" ? { ...truth(draw), copy: "consent" } : null) },
  ],
  words: {
    en: {
      title: "Where a picture goes",
      stems: [
        (say) => [rule(say.about("hospital")), `The operation on ${say.about("child")}’s knee is over. ${REQUESTS[say.about("request")]?.text ?? ""}`],
        (say) => [`The operation on ${say.about("child")}’s knee is over. ${REQUESTS[say.about("request")]?.text ?? ""}`, rule(say.about("hospital"))],
        (say) => [`A picture of a child’s knee is part of that child’s record. ${rule(say.about("hospital"))}`, REQUESTS[say.about("request")]?.text ?? ""],
      ],
      question: "Which way does the picture go by this rule, and what must be done for a copy?",
      givens: {},
      attributes: { route: "Way", copy: "Copy" },
      options: { archive: "Into the archive, or from it", paper: "Printed into the paper record", nowhere: "Not kept", phone: "By own phone", stick: "On a plain memory stick", "not-needed": "No copy leaves the record", nameless: "Copy without a name", consent: "Copy only with written consent" },
      slips: {
        "own-phone": { name: "own phone", because: () => ["A picture on your own phone has left the hospital, whatever you delete later. Nobody can say where its copies are."] },
        "plain-stick": { name: "plain memory stick", because: () => ["A plain stick can be lost and read by anybody. The rule names the archive."] },
        "name-off-is-enough": { name: "name taken off and called enough", because: () => ["This copy leaves the house. Without a name it is still this child’s knee, and the rule wants written consent."] },
        "inside-is-free": { name: "inside the house taken for free", because: () => ["Inside the house the copy goes without a name. Who is taught does not need to know whose knee it is."] },
        "consent-for-the-notes": { name: "consent asked where no copy leaves", because: () => ["Nothing leaves the record here. Consent for a copy is asked when there is one."] },
      },
      working: () => ["Ask first whether it belongs to the notes, then whether the archive answers, then whether a copy leaves the record or the house."],
      right: () => ["That is what this rule says. At your own hospital the rule may be another one; the questions are the same."],
      off: () => ["Read the rule again with three questions: does it belong to the notes, does the archive answer, does a copy leave?"],
      moves: () => ["With the archive down, the way changes; with a copy that leaves the house, consent comes first."],
    },
  },
};
