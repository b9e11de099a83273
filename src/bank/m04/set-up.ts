import type { OrderFamily } from "../../engine/question/family.ts";
import { setUpEdges } from "../../facts/graph-set-up.ts";
import { LOCAL_LIST } from "../../facts/local-list.ts";
import { HOSPITALS, SIDES } from "../m01/common.ts";

/** What the list of another hospital marks keep. */
const ELSEWHERE = "blunt obturator";

const ALWAYS = ["list-read", "pack-checked", "pack-opened", "counted", "connected", "white", "picture", "skin", "kept", "count-closed", "binned"] as const;
const MORE = ["field", "fluid", "warmed", "integrity"] as const;

/** 04e: opening and connecting, with what the list says to keep. */
export const setUp: OrderFamily = {
  kind: "order",
  id: "set-up",
  code: "04e",
  module: "M04",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m04-order"],
  reads: [],
  sources: [],
  cautions: ["C2", "C5", "C7"],
  givens: [],
  edges: setUpEdges,
  draw: (chance, local = LOCAL_LIST) => {
    const hospital = chance.pick(HOSPITALS);
    const kept = hospital === local.hospital ? (chance.shuffled(local.pack.filter(({ keep }) => keep))[0]?.thing ?? ELSEWHERE) : ELSEWHERE;
    const more = chance.shuffled(MORE).slice(0, chance.below(MORE.length + 1));
    return { givens: {}, about: { hospital, side: chance.pick(SIDES), kept }, shown: chance.shuffled([...ALWAYS, ...more]), local: local.hash };
  },
  slips: [
    { id: "opened-unchecked", breaks: ["pack-checked", "pack-opened"] },
    { id: "skin-before-the-picture", breaks: ["picture", "skin"] },
    { id: "picture-before-white", breaks: ["white", "picture"] },
    { id: "connected-before-integrity", breaks: ["integrity", "connected"] },
    { id: "binned-early", breaks: ["count-closed", "binned"] },
  ],
  words: {
    en: {
      title: "Open, connect, keep",
      stems: [
        (say) => [`A ${say.about("side")} knee at ${say.about("hospital")}, a single-use scope set, a trolley still bare. The local list marks the ${say.about("kept")}: keep until the count is closed.`],
        (say) => [`You show a new colleague at ${say.about("hospital")} how the set is opened and connected for a ${say.about("side")} knee. On the list the ${say.about("kept")} is marked keep until the count is closed.`],
        (say) => [`What is done too early cannot be undone: an opened pack, a cut skin, a full bin. Order the set-up for a ${say.about("side")} knee at ${say.about("hospital")}.`],
      ],
      question: "In which order? Any order that breaks no rule will do.",
      givens: {},
      cards: {
        "list-read": "Read the local content list",
        field: "Lay the sterile field",
        "pack-checked": "Check the pack: date, seal, indicator, label",
        "pack-opened": "Open the pack onto the field",
        counted: "Make the opening count",
        integrity: "Look at each part: whole, no crack, no bent tip",
        connected: "Connect the scope to its screen",
        white: "Set the white balance",
        picture: "Check the picture: sharp, upright, true colour",
        warmed: "Take the fluid warmed as the sheet says",
        fluid: "Fill the tubing and let the air out",
        kept: (say) => `Set aside the ${say.about("kept")}, which the list marks keep`,
        skin: "Make the first cut",
        "count-closed": "Close the final count",
        binned: (say) => `Dispose of the ${say.about("kept")} that was kept`,
      },
      slips: {
        "opened-unchecked": { name: "opened before it was checked", because: () => ["An opened pack is used or thrown away; its date and its seal can no longer be read for sure."] },
        "skin-before-the-picture": { name: "cut before there was a picture", because: () => ["If the scope fails now, the child has a wound and no view. The picture is checked while the skin is whole."] },
        "picture-before-white": { name: "picture judged before the white balance", because: () => ["Without white balance the colours are anybody’s guess, and the first picture goes into the record."] },
        "connected-before-integrity": { name: "connected before the parts were looked at", because: () => ["A cracked part is found when it leaks or breaks inside. Look at it while it is in your hand."] },
        "binned-early": { name: "binned early", because: () => ["The list marks this item keep: the count cannot close without it. Out of the bin nothing is countable."] },
      },
      working: () => ["Check before opening, look before connecting, white before picture, picture before skin.", "What the list marks keep stays until the count is closed.", "Author’s order after common practice, no source; your local list comes first."],
      right: () => ["Everything that cannot be undone waits for its check. The rest may follow your habit."],
      off: () => ["Four steps cannot be undone: opening, cutting, using the first picture, and binning. Each has a check that stands before it."],
      moves: () => ["The fluid, the field and the list have room to move. The checks before opening, before the skin and before the bin have none."],
      turns: () => ["Any order in which each check stands before the step that it protects."],
    },
  },
};
