import type { NameFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import { HOSPITALS } from "../m01/common.ts";

interface View {
  readonly text: string;
  readonly cause: string;
  readonly step: string;
  /** A cause that looks alike and is taken for it. */
  readonly alike: string;
}

/** What the first picture looks like, its likely cause and the next step; common practice, no source. */
const VIEWS: Readonly<Record<string, View>> = {
  blurred: { text: "The whole picture is soft, at every distance, and stays so in air and in fluid; the tip has just been wiped.", cause: "focus", step: "set-focus", alike: "mist" },
  misted: { text: "The picture was sharp in air, turned milky as the scope came into warm fluid, and clears in the middle first.", cause: "mist", step: "wipe", alike: "focus" },
  dark: { text: "The picture is sharp and dark all over; the light source runs at its lowest step.", cause: "light", step: "raise-light", alike: "cable" },
  unlit: { text: "The picture is nearly black; light leaks out at the joint of the light lead.", cause: "cable", step: "reconnect", alike: "light" },
  tinted: { text: "The picture is sharp and bright, and a white swab looks orange in it.", cause: "white", step: "balance", alike: "blood" },
  red: { text: "A swab looks white in the picture outside, but inside the joint everything is red and streaming.", cause: "blood", step: "outflow", alike: "white" },
  turned: { text: "The picture is sharp, and the trickle of fluid runs upwards in it.", cause: "horizon", step: "turn-camera", alike: "mirrored" },
  crescent: { text: "A dark crescent covers one edge and turns with the scope; the rest is sharp.", cause: "seating", step: "reseat", alike: "light" },
};
const OFTEN = ["focus", "mist", "light", "cable", "white", "blood", "horizon", "seating", "mirrored"] as const;
const STEPS = ["set-focus", "wipe", "raise-light", "reconnect", "balance", "outflow", "turn-camera", "reseat", "bin"] as const;

const view = (draw: Pick<Draw, "about">): View => VIEWS[draw.about["view"] ?? ""] ?? (VIEWS["blurred"] as View);
const truth = (draw: Pick<Draw, "about">): Readonly<Record<string, string>> => ({ cause: view(draw).cause, step: view(draw).step });

/** 04i: the likely cause of a bad first picture, and the next step. */
export const firstPicture: NameFamily = {
  kind: "name",
  id: "first-picture",
  code: "04i",
  module: "M04",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m04-picture"],
  reads: [],
  sources: [],
  cautions: ["C2", "C7"],
  givens: [],
  attributes: [
    { id: "cause", options: OFTEN },
    { id: "step", options: STEPS },
  ],
  draw: (chance) => ({ givens: {}, about: { view: chance.pick(Object.keys(VIEWS)), hospital: chance.pick(HOSPITALS), case: chance.pick(["first", "second", "third"]) } }),
  truth,
  slips: [
    { id: "cause-exchanged", gives: (draw) => ({ ...truth(draw), cause: view(draw).alike }) },
    { id: "scope-binned-first", gives: (draw) => ({ ...truth(draw), step: "bin" }) },
  ],
  words: {
    en: {
      title: "The first picture",
      stems: [
        (say) => [`The ${say.about("case")} case at ${say.about("hospital")}. ${VIEWS[say.about("view")]?.text ?? ""}`],
        (say) => [`Something is wrong with the first picture. ${VIEWS[say.about("view")]?.text ?? ""} ${say.about("hospital")}, ${say.about("case")} case.`],
        (say) => [`A new scope is rarely broken; usually something before or behind it is. ${say.about("hospital")}, ${say.about("case")} case: ${(VIEWS[say.about("view")]?.text ?? "").charAt(0).toLowerCase()}${(VIEWS[say.about("view")]?.text ?? "").slice(1)}`],
      ],
      question: "What is the likely cause, and what is tried first?",
      givens: {},
      attributes: { cause: "Likely cause", step: "First step" },
      options: {
        focus: "Out of focus", mist: "Tip misted over", light: "Light set too low", cable: "Light lead not seated", white: "White balance not set", blood: "Blood in the joint", horizon: "Camera turned", seating: "Scope not seated in the sheath", mirrored: "Picture mirrored by the screen",
        "set-focus": "Set the focus", wipe: "Wipe and warm the tip", "raise-light": "Raise the light", reconnect: "Reconnect the light lead", balance: "Set the white balance", outflow: "Wash through: inflow on, outflow open", "turn-camera": "Turn the camera upright", reseat: "Seat the scope again", bin: "Put the scope aside and open another",
      },
      slips: {
        "cause-exchanged": { name: "cause exchanged", because: () => ["The two look alike. Ask what the picture does in air and in fluid, and what turns when you turn the scope."] },
        "scope-binned-first": { name: "scope put aside first", because: () => ["Another scope shows the same fault if the cause lies elsewhere, and single-use means that the first is gone. Try the simple step first."] },
      },
      working: () => ["Sharp or not, bright or not, true colour or not, upright or not: the first no names the place to look.", "Common practice, no source; the device’s instructions come first."],
      right: () => ["The simple step first. If it does not help, the next one up, and another scope last."],
      off: () => ["Sort by what is wrong: sharpness, light, colour, horizon, a covered edge. Each has its own place to look."],
      moves: () => ["If the fault stays after the simple step, it has moved one place up, from the tip to the lead to the screen."],
    },
  },
};
