import type { NameFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { CHILDREN, HOSPITALS, SIDES } from "../m01/common.ts";

/** Stations whose view holds enough to be told apart: a cruciate or the popliteus tendon is always in it. */
const PLACES: Readonly<Record<string, "medial" | "lateral" | "notch">> = { "medial-body": "medial", "medial-back": "medial", notch: "notch", "lateral-back": "lateral", hiatus: "lateral" };
const UPS = ["12", "3", "6", "9"] as const;
const OPPOSITE: Readonly<Record<string, string>> = { "12": "6", "3": "9", "6": "12", "9": "3" };

type Picks = Readonly<Record<"compartment" | "side" | "up", string>>;

const truth = ({ about }: Pick<Draw, "about">): Picks => ({ compartment: PLACES[about["station"] ?? ""] ?? "", side: about["side"] ?? "", up: about["up"] ?? "" });
const COMPARTMENTS: Readonly<Record<string, string>> = { medial: "Medial", lateral: "Lateral", notch: "Notch" };
const COMPARTMENT_FOR: Readonly<Record<string, string>> = { medial: "lateral", lateral: "medial", notch: "medial" };
const hour = (up: string): string => `Towards ${up} o’clock`;

const LANDMARKS: Readonly<Record<string, string>> = {
  medial: "No tendon crosses behind the band, and the broad cord beside it is the posterior cruciate, which lies towards the notch. With up on top that is to the left in a right knee.",
  lateral: "A round cord dips behind the band: the popliteus tendon, which only the lateral side has. With up on top it is at the left in a right knee, and the notch is at the right.",
  notch: "Two flat cords cross. The one in front is the anterior cruciate. It climbs to the lateral condyle: with up on top to the left in a right knee.",
};
const landmark = (say: Say): string => LANDMARKS[truth({ about: { station: say.about("station") } }).compartment] ?? "";
const told = (say: Say): string => `${COMPARTMENTS[PLACES[say.about("station")] ?? ""] ?? ""}, ${say.about("side")} knee, up ${hour(say.about("up")).toLowerCase()}.`;

/** 08f: compartment, side and up of a view computed from the model. */
export const whereAmI: NameFamily = {
  kind: "name",
  id: "where-am-i",
  code: "08f",
  module: "M08",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m08-where"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [],
  attributes: [{ id: "compartment", options: ["medial", "lateral", "notch"] }, { id: "side", options: SIDES }, { id: "up", options: UPS }],
  draw: (chance) => ({
    givens: {},
    about: { station: chance.pick(Object.keys(PLACES)), back: chance.pick(["0", "2"]), side: chance.pick(SIDES), up: chance.pick(["12", "12", "3", "6", "9"]), child: chance.pick(CHILDREN), hospital: chance.pick(HOSPITALS) },
  }),
  truth,
  slips: [
    { id: "mirrored", gives: (draw) => ({ ...truth(draw), side: truth(draw).side === "left" ? "right" : "left" }) },
    { id: "camera-taken-as-level", gives: (draw) => (truth(draw).up === "12" ? null : { ...truth(draw), up: "12" }) },
    { id: "condyle-taken-for-floor", gives: (draw) => (OPPOSITE[truth(draw).up] === "12" ? null : { ...truth(draw), up: OPPOSITE[truth(draw).up] ?? "" }) },
    { id: "landmark-left-out", gives: (draw) => ({ ...truth(draw), compartment: COMPARTMENT_FOR[truth(draw).compartment] ?? "" }) },
  ],
  words: {
    en: {
      title: "Where is this",
      stems: [
        (say) => [`The screen goes dark for a moment at ${say.about("hospital")}. When the picture of ${say.about("child")} comes back nobody remembers how the camera is held.`],
        (say) => [`A still without a caption lies in the file of ${say.about("child")}. It was taken from the front; which knee and which way up is not written on it.`],
        (say) => [`You walk into a theatre at ${say.about("hospital")} late, and this is on the screen. The scope came in from the front; the camera may have been turned.`],
      ],
      question: "Which compartment is it, of which knee, and where in the picture is up in the patient?",
      givens: {},
      attributes: { compartment: "Compartment", side: "Knee", up: "Up in the patient" },
      options: { ...COMPARTMENTS, left: "Left", right: "Right", ...Object.fromEntries(UPS.map((up) => [up, hour(up)])) },
      slips: {
        mirrored: { name: "mirrored", because: (say) => [`Put up on top first, then look where the midline lies. ${landmark(say)}`] },
        "camera-taken-as-level": { name: "camera taken as level", because: (say) => [`The rounded condyle is above and the flat plateau below in the patient. Here up is ${hour(say.about("up")).toLowerCase()}.`] },
        "condyle-taken-for-floor": { name: "condyle taken for the floor", because: () => ["The round surface is the femur and lies above. The flat one on which the band rests is the tibia."] },
        "landmark-left-out": { name: "landmark left out", because: (say) => [landmark(say)] },
      },
      working: (say) => ["Up first: the condyle is round and lies above, the band rests on the plateau below.", landmark(say), told(say)],
      right: (say) => [`${told(say)} ${landmark(say)}`],
      off: (say) => [`Up first, then the landmark, then the side. ${told(say)}`],
      moves: () => ["The mirror image of this picture is the same compartment of the other knee. Only up, front and the midline together name a side."],
    },
  },
};
