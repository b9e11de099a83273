import type { Draw } from "../../engine/question/family-head.ts";
import type { NameFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { posteriorPortal } from "../../facts/posterior-portal.ts";
import { childOf, drawCase } from "./later-words.ts";

const DAYS_PIN = "pseudoaneurysm-found.days@1";
/** From the soonest to the latest. */
const SLOTS = ["emergency", "today", "tomorrow", "clinic"] as const;
type Slot = (typeof SLOTS)[number];

interface Call {
  readonly told: string;
  readonly slot: Slot;
  readonly why: string;
  /** Days after the operation on which such a call comes. */
  readonly from: number;
  readonly to: number;
}

const CALLS: Readonly<Record<string, Call>> = {
  chest: { told: "It is hard to breathe since this morning, and the chest hurts.", slot: "emergency", why: "Breathing and chest pain after an operation are an emergency until somebody has shown otherwise.", from: 2, to: 28 },
  pale: { told: "The foot is cold and pale; the other one is warm.", slot: "emergency", why: "A cold, pale foot may have lost its blood flow, and a leg does not have many hours.", from: 0, to: 5 },
  "no-pulse": { told: "The community nurse cannot feel the pulse at the foot.", slot: "emergency", why: "No pulse means no time.", from: 0, to: 7 },
  "foot-drop": { told: "The foot hangs down and cannot be lifted; yesterday it could.", slot: "emergency", why: "A foot that drops may be a nerve that fails, and a nerve under pressure does not wait.", from: 0, to: 6 },
  numb: { told: "The back of the foot is numb, and that is new.", slot: "emergency", why: "A numb foot that was not numb before may be a nerve or a tight leg.", from: 0, to: 6 },
  stretch: { told: "The pain grows in spite of the medicine and is worst when the toes are stretched.", slot: "emergency", why: "Pain on stretching the toes that outgrows its medicine is a tight leg until shown otherwise.", from: 0, to: 3 },
  pulsating: { told: "Behind the knee there is a swelling that beats.", slot: "today", why: "A swelling that beats may be an artery with a hole in its wall. It has been found as late as ten weeks after knee arthroscopy.", from: 4, to: 70 },
  "blood-again": { told: "The swelling of the knee had gone down. Now it is tense again, as if full of blood; there was no fall.", slot: "today", why: "Blood again in the joint without a fall may come from an injured artery, and weeks later still.", from: 8, to: 70 },
  hot: { told: "The knee is hot and red, and there is fever.", slot: "today", why: "A hot knee with fever may be an infected joint, and cartilage does not wait.", from: 3, to: 30 },
  calf: { told: "One calf is thick and hurts when it is pressed. Breathing is easy.", slot: "today", why: "A thick, sore calf may be a clot, and it has to be looked at before it moves.", from: 3, to: 28 },
  dressing: { told: "The dressing is wet through with clear fluid; there is no fever, and the foot is warm and moves.", slot: "tomorrow", why: "Clear fluid without fever can wait until tomorrow, in a dry dressing.", from: 1, to: 4 },
  medicine: { told: "The medicine for pain has run out. The pain is what it was yesterday, and the toes move freely.", slot: "tomorrow", why: "The plan is short of medicine, not the leg of blood. Tomorrow will do; growing pain would not.", from: 2, to: 6 },
  stitch: { told: "A stitch in the skin has come out, and the edges lie together. It is dry.", slot: "tomorrow", why: "A dry wound with its edges together can be looked at tomorrow.", from: 3, to: 10 },
  stiff: { told: "The knee is stiff in the morning and becomes freer in the day. It is cool, and there is no fever.", slot: "clinic", why: "Morning stiffness of a cool knee belongs to these weeks; ask about it at the visit.", from: 21, to: 60 },
  sport: { told: "When may football begin again? Everything else is well.", slot: "clinic", why: "A question about sport is answered best with the knee in front of you.", from: 30, to: 70 },
  scar: { told: "The scar itches a little. It is pale and dry.", slot: "clinic", why: "An itching, pale, dry scar is a scar that heals.", from: 21, to: 60 },
};

const callOf = (about: Draw["about"]): Call => CALLS[about["call"] ?? ""] ?? (CALLS["chest"] as Call);
const slotOf = (draw: Draw): Slot => callOf(draw.about).slot;
const rank = (slot: string): number => (SLOTS as readonly string[]).indexOf(slot);
const called = (say: Say): Call => callOf({ call: say.about("call") });

const drawn = (chance: Chance): Draw => {
  const id = chance.pick(Object.keys(CALLS));
  const { from, to } = CALLS[id] as Call;
  const latest = id === "pulsating" ? (posteriorPortal(DAYS_PIN).number.to as number) : to;
  return { givens: {}, about: { ...drawCase(chance), call: id, day: String(chance.onGrid({ least: from, greatest: latest, step: 1 })) } };
};

const onlyIf = (holds: boolean, when: Slot): Readonly<Record<string, string>> | null => (holds ? { when } : null);

const TEXTS: Readonly<Record<Slot, string>> = { emergency: "Emergency number, now", today: "Seen today", tomorrow: "Seen tomorrow", clinic: "At the next clinic visit" };
const dayText = (say: Say): string => (say.about("day") === "0" ? "on the evening of the operation" : `on day ${say.about("day")}`);
const nowText = (say: Say): string => (say.about("day") === "0" ? "it is the evening of the same day" : `it is now day ${say.about("day")}`);
const card = (say: Say): string => `The card at ${say.about("hospital")} knows four answers: the emergency number for whatever may cost blood flow, nerve, leg or breath; today for what may be a clot, an infected joint or an artery that bleeds, up to ten weeks; tomorrow for wound and medicine without any of these; the clinic for what is merely a question.`;

/** 14j: how soon a child must be seen. */
export const redFlag: NameFamily = {
  kind: "name",
  id: "red-flag",
  code: "14j",
  module: "M14",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m14-red-flag"],
  reads: [DAYS_PIN],
  sources: [{ source: "pseudoaneurysm", entry: DAYS_PIN }],
  cautions: ["C2", "C16"],
  givens: [],
  attributes: [{ id: "when", options: SLOTS }],
  draw: drawn,
  truth: (draw) => ({ when: slotOf(draw) }),
  isUnsafe: (draw, picks) => rank(picks["when"] ?? "") > rank(slotOf(draw)),
  slips: [
    { id: "waited", gives: (draw) => onlyIf(slotOf(draw) === "emergency", "today") },
    { id: "put-off-until-tomorrow", gives: (draw) => onlyIf(rank(slotOf(draw)) < rank("tomorrow"), "tomorrow") },
    { id: "left-for-the-clinic", gives: (draw) => onlyIf(slotOf(draw) !== "clinic", "clinic") },
    { id: "everything-is-an-emergency", gives: (draw) => onlyIf(rank(slotOf(draw)) >= rank("tomorrow"), "emergency") },
    { id: "called-in-for-a-question", gives: (draw) => onlyIf(slotOf(draw) === "clinic", "today") },
  ],
  words: {
    en: {
      title: "How soon must this child be seen?",
      stems: [
        (say) => [`A call about ${childOf(say)}, ${say.about("day") === "0" ? "on the evening of" : `${dayText(say)} after`} an arthroscopy of the ${say.about("side")} knee: “${called(say).told}”`, card(say)],
        (say) => [`You hold the telephone of the ward at ${say.about("hospital")}. ${childOf(say)}, had the ${say.about("side")} knee operated on; ${nowText(say)}. “${called(say).told}”`, card(say)],
        (say) => [`${childOf(say)}, ${say.about("side")} knee, ${dayText(say)}. What you are told: “${called(say).told}”`, card(say)],
      ],
      question: "How soon, by this card?",
      givens: {},
      attributes: { when: "When" },
      options: TEXTS,
      slips: {
        waited: { name: "an emergency seen later today", because: (say) => [`${called(say).why} “Today” may be hours away; the card says now.`] },
        "put-off-until-tomorrow": { name: "put off until tomorrow", because: (say) => [`${called(say).why} A night lies between, and nobody looks.`] },
        "left-for-the-clinic": { name: "left for the clinic", because: (say) => [`${called(say).why} The card says: ${TEXTS[called(say).slot].toLowerCase()}. The next clinic may be weeks away.`] },
        "everything-is-an-emergency": { name: "everything an emergency", because: (say) => [`${called(say).why} Sending everybody at once does no harm to this child, but it wears the card out. If in doubt, sooner is right.`] },
        "called-in-for-a-question": { name: "called in for a question", because: (say) => [`${called(say).why} Sooner does no harm; the card leaves it for the visit.`] },
      },
      working: (say) => ["Blood flow, nerve, leg, breath: now. Clot, infected joint, artery: today. Wound and medicine: tomorrow. Questions: the visit.", called(say).why],
      right: (say) => [`${TEXTS[called(say).slot]}. ${called(say).why}`],
      off: (say) => [`By the card: ${TEXTS[called(say).slot].toLowerCase()}. ${called(say).why}`],
      moves: () => ["One sign more moves the answer forward, never back: fever with a wet dressing, a foot that changes, pain that grows in spite of medicine."],
      turns: () => ["A later slot would be right only if the sign that decides were not there, and somebody had looked."],
    },
  },
};
