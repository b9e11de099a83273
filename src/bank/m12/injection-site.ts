import type { Draw, Language } from "../../engine/question/family-head.ts";
import type { JudgeFamily, Judgement } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { localAnaesthetic } from "../../facts/local-anaesthetic.ts";
import { drawPatient, whoIs } from "./dose-words.ts";

const HALF_PIN = "chondrolysis.half-percent@1";
const QUARTER_PIN = "chondrolysis.quarter-percent@1";

interface SiteCase {
  readonly told: string;
  readonly judgement: Judgement;
}
const PORTALS: Judgement = { picks: "portals", reasons: ["cartilage", "as-good"] };
const ASK: Judgement = { picks: "ask", reasons: ["limit-open"] };

/** What is planned, and what is known about the volume. */
const CASES: Readonly<Record<string, SiteCase>> = {
  within: { told: "The volume drawn up lies within the limit of the sheet. Where does it go?", judgement: PORTALS },
  "one-shot": { told: "The surgeon would like to leave the last syringe in the joint, once, before the scope comes out. The volume is within the limit.", judgement: PORTALS },
  pump: { told: "Somebody offers a pump that would drip the agent into the joint for a day. The whole of it would stay within the limit by weight.", judgement: PORTALS },
  weaker: { told: "Somebody says that the weaker strength may be pumped into the joint, for only the stronger one harms. The volume is within the limit.", judgement: PORTALS },
  "open-cartilage": { told: "A flake of cartilage has been smoothed, and bare bone shows. The volume is within the limit.", judgement: PORTALS },
  "adult-habit": { told: "“In adults we always put it into the joint,” says a visitor. The volume is within the limit.", judgement: PORTALS },
  "block-before": { told: "The anaesthetist gave a block before the list, and nobody has written down how much.", judgement: ASK },
  "no-weight": { told: "The weight on the chart has no date, and the limit goes by weight.", judgement: ASK },
};
const caseOf = (id: string | undefined): SiteCase => CASES[id ?? ""] ?? (CASES["within"] as SiteCase);
const told = (say: Say): SiteCase => caseOf(say.about("case"));
const decide = (draw: Draw): Judgement => caseOf(draw.about["case"]).judgement;
const OPTIONS = { portals: "Portals and skin", joint: "Into the joint, once", pump: "By pump into the joint", ask: "Nothing yet: ask first" } as const;
const decided = (say: Say): string => OPTIONS[told(say).judgement.picks as keyof typeof OPTIONS];
const isOpen = (say: Say): boolean => told(say).judgement.picks === "ask";
const shares = (): string => `Under pumps a loss of cartilage was found in ${localAnaesthetic(HALF_PIN).value.value} per cent of joints at the stronger and ${localAnaesthetic(QUARTER_PIN).value.value} per cent at the weaker strength, in adults and adolescents.`;

const words: JudgeFamily["words"][Language] = {
  title: "Within the limit, but where?",
  stems: [
    (say) => [`${whoIs(say)} The arthroscopy is ending. ${told(say).told}`],
    (say) => [`At ${say.about("hospital")} the local anaesthetic for ${say.about("child")}, ${say.about("age")}, lies ready. ${told(say).told}`],
    (say) => [`${told(say).told} The child is ${say.about("child")}, ${say.about("age")}.`],
  ],
  question: "Where does it go, and why? Name every reason that holds.",
  givens: {},
  options: OPTIONS,
  reasons: {
    cartilage: "All common agents harm cartilage, infusions most",
    "as-good": "At the portals it was found as good after one hour",
    "limit-open": "The limit for this child cannot be reckoned yet",
    "within-so-anywhere": "Within the limit it may go anywhere",
    "weak-is-harmless": "The weaker strength does no harm",
  },
  slips: {
    "pump-into-the-joint": { name: "pump into the joint", because: () => [`A limit by weight says nothing about cartilage. ${shares()} None of these is a rate for children.`] },
    "within-so-anywhere": { name: "within the limit, so anywhere", because: () => ["The limit guards the heart and the brain. Cartilage is another question, and all common agents harm it."] },
    "asked-though-known": { name: "asked where it is known", because: () => ["Asking is never wrong in a theatre. Here the volume is within the limit, and what is asked is the place."] },
    "limit-not-asked": { name: "given before the limit was known", because: () => ["What was given before, or what the child weighs, is not known. Without it there is no limit to be within."] },
  },
  working: (say) => ["First: can the limit be reckoned? Weight with its date, and everything given before.", "Then the place: all common agents harm cartilage, infusions most; at the portals they served as well after one hour.", `Here: ${decided(say).toLowerCase()}.`],
  right: (say) => [isOpen(say) ? "Ask first. A limit that cannot be reckoned is no limit." : "Portals and skin. The pain is there, and the cartilage is not."],
  off: (say) => [`Here: ${decided(say).toLowerCase()}. ${isOpen(say) ? "The limit cannot be reckoned yet." : shares()}`],
  moves: () => ["A missing weight or an unknown earlier dose turns every answer into “ask first”. A smaller volume does not make the joint the right place."],
  turns: () => ["No volume and no strength makes a pump into the joint right."],
};

/** 12k: where the local anaesthetic goes. */
export const injectionSite: JudgeFamily = {
  kind: "judge",
  id: "injection-site",
  code: "12k",
  module: "M12",
  version: 1,
  firstWave: false,
  unsafe: true,
  objectives: ["m12-sheet"],
  reads: [HALF_PIN, QUARTER_PIN],
  sources: [{ source: "buchko-2015", entry: HALF_PIN }, { source: "buchko-2015", entry: QUARTER_PIN }],
  cautions: ["C2", "C4"],
  givens: [],
  options: ["portals", "joint", "pump", "ask"],
  reasons: ["cartilage", "as-good", "limit-open", "within-so-anywhere", "weak-is-harmless"],
  draw: (chance) => ({ givens: {}, about: { ...drawPatient(chance).about, case: chance.pick(Object.keys(CASES)) } }),
  decide,
  unsafeOptions: (draw) => (decide(draw).picks === "ask" ? ["portals", "joint", "pump"] : ["joint", "pump"]),
  slips: [
    { id: "pump-into-the-joint", gives: () => ({ picks: "pump", reasons: ["weak-is-harmless"] }) },
    { id: "within-so-anywhere", gives: () => ({ picks: "joint", reasons: ["within-so-anywhere"] }) },
    { id: "asked-though-known", gives: (draw) => (decide(draw).picks === "ask" ? null : { picks: "ask", reasons: decide(draw).reasons }) },
    { id: "limit-not-asked", gives: (draw) => (decide(draw).picks === "ask" ? PORTALS : null) },
  ],
  words: { en: words },
};
