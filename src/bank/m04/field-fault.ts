import type { TrayFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import { HOSPITALS } from "../m01/common.ts";

/** Packagings as they lie there: what is printed or seen, and whether the barrier or the label may be trusted. */
const STATES: Readonly<Record<string, { readonly text: string; readonly fault?: "barrier" | "indicator" | "label" }>> = {
  whole: { text: "film whole, seal closed all round, indicator changed, label as on the list" },
  dent: { text: "outer box dented, inner film whole and sealed, indicator changed, label as on the list" },
  crease: { text: "paper creased, no hole against the light, seal closed, indicator changed, label as on the list" },
  sticker: { text: "hospital’s own sticker over a corner, film whole, seal closed, indicator changed, label as on the list" },
  "small-tear": { text: "a tear of a fingernail’s width in the film, seal closed, indicator changed, label as on the list", fault: "barrier" },
  wet: { text: "paper dry now, with a brown water mark, seal closed, indicator changed, label as on the list", fault: "barrier" },
  unsealed: { text: "film whole, seal open along one edge, indicator changed, label as on the list", fault: "barrier" },
  pinhole: { text: "light shines through a pinhole in the paper, seal closed, indicator changed, label as on the list", fault: "barrier" },
  unchanged: { text: "film whole, seal closed, indicator still in its first colour, label as on the list", fault: "indicator" },
  mismatch: { text: "film whole, seal closed, indicator changed, inner label another lot than the outer one", fault: "label" },
};
const ITEMS = ["Scope", "Sheath", "Tubing", "Probe", "Suture retriever", "Needles", "Drape"] as const;
const SOUND = ["whole", "whole", "dent", "crease", "sticker"] as const;
const FAULTY = ["small-tear", "wet", "unsealed", "pinhole", "unchanged", "mismatch"] as const;

const stateOf = (draw: Pick<Draw, "about">, id: string): string => draw.about[id] ?? "whole";
const faultsOf = (draw: Draw): readonly string[] => (draw.shown ?? []).filter((id) => STATES[stateOf(draw, id)]?.fault !== undefined);
const passing = (draw: Draw, ...states: readonly string[]): readonly string[] | null => {
  const passed = (draw.shown ?? []).filter((id) => states.includes(stateOf(draw, id)));
  return passed.length === 0 ? null : faultsOf(draw).filter((id) => !passed.includes(id));
};

/** 04h: packagings that may not be opened onto the field. */
export const fieldFault: TrayFamily = {
  kind: "tray",
  id: "field-fault",
  code: "04h",
  module: "M04",
  version: 1,
  firstWave: false,
  unsafe: true,
  objectives: ["m04-check"],
  reads: [],
  sources: [],
  cautions: ["C5", "C7"],
  givens: [],
  draw: (chance) => {
    const shown = chance.shuffled(ITEMS.map((name) => name.toLowerCase().replaceAll(" ", "-"))).slice(0, 5 + chance.below(3));
    const faulty = chance.shuffled(FAULTY).slice(0, 2 + chance.below(3));
    const about = Object.fromEntries(chance.shuffled(shown).map((id, at) => [id, faulty[at] ?? chance.pick(SOUND)]));
    return { givens: {}, about: { ...about, hospital: chance.pick(HOSPITALS) }, shown };
  },
  faults: faultsOf,
  critical: (draw) => faultsOf(draw).filter((id) => STATES[stateOf(draw, id)]?.fault !== "label"),
  slips: [
    { id: "small-tear-passed", gives: (draw) => passing(draw, "small-tear", "pinhole") },
    { id: "dried-is-not-dry", gives: (draw) => passing(draw, "wet") },
    { id: "seal-not-followed", gives: (draw) => passing(draw, "unsealed") },
    { id: "indicator-not-read", gives: (draw) => passing(draw, "unchanged") },
    { id: "inner-label-not-read", gives: (draw) => passing(draw, "mismatch") },
    {
      id: "a-dent-thrown-away",
      gives: (draw) => {
        const flagged = (draw.shown ?? []).filter((id) => ["dent", "crease", "sticker"].includes(stateOf(draw, id)));
        return flagged.length === 0 ? null : [...faultsOf(draw), ...flagged];
      },
    },
  ],
  words: {
    en: {
      title: "Whole, dry, sealed, changed",
      stems: [
        (say) => [`Packs beside the trolley at ${say.about("hospital")}, not yet opened. You take each into your hand, hold it to the light, follow the seal and read both labels.`],
        (say) => [`Before anything goes onto the field at ${say.about("hospital")}, you look at its packaging. What was found is written beside each.`],
        (say) => [`Sterile is what nobody can see; a barrier is what everybody can. ${say.about("hospital")}, the packs for one knee.`],
      ],
      question: "Which packs may not be opened onto the field?",
      givens: {},
      thing: (say, id) => `${ITEMS.find((name) => name.toLowerCase().replaceAll(" ", "-") === id) ?? id}: ${STATES[say.about(id)]?.text ?? ""}`,
      nothing: "All may be opened",
      slips: {
        "small-tear-passed": { name: "a small hole passed", because: () => ["There is no small hole in a barrier. What lets light through lets everything through."] },
        "dried-is-not-dry": { name: "dried taken for dry", because: () => ["Water carried germs through the paper when it was wet. The mark says that it was."] },
        "seal-not-followed": { name: "seal not followed", because: () => ["The film is whole and the edge is open. Follow the seal all the way round with a finger."] },
        "indicator-not-read": { name: "indicator not read", because: () => ["The indicator has kept its first colour, so the pack has not been through its cycle. A sound film around it means nothing."] },
        "inner-label-not-read": { name: "inner label not read", because: () => ["Outer and inner label name different lots. What goes into the record would be wrong, so it is put aside and reported."] },
        "a-dent-thrown-away": { name: "sound pack thrown away", because: () => ["A dent, a crease or a sticker leaves the barrier whole. Thrown away it is waste, and the spare is missing later."] },
      },
      working: () => ["Barrier whole, dry and sealed; indicator changed; both labels the same. All three, or it stays closed.", "Common practice, no source; your hospital’s rule comes first."],
      right: () => ["The broken ones are put aside and reported; the sound ones are used. Both halves matter."],
      off: () => ["Ask each pack the same questions: is the barrier whole, was it ever wet, is the seal closed all round, has the indicator changed, do both labels agree?"],
      moves: () => ["One hole more in a film turns any of the others into a fault; a dent in an outer box turns none."],
    },
  },
};
