import { withUnit } from "../../engine/quantity/format.ts";
import type { NameFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { discoid } from "../../facts/discoid.ts";
import { CHILDREN, HOSPITALS, SIDES } from "../m01/common.ts";

const LOOSE = "discoid-rim-loose.registry@1";
const MORE_PLACES = "discoid-rim-loose-two-sites.registry@1";
const TYPES = "discoid-shift-types.review@1";
const FRONT_MARGIN = "discoid-margin-in.front@1";
const BACK_MARGIN = "discoid-margin-in.back@1";

const percent = (pin: string): string => withUnit(String(discoid(pin).number.value ?? 0), "%");
const [LOOSE_SAID, MORE_SAID] = [percent(LOOSE), percent(MORE_PLACES)];

type About = Draw["about"];
type Picks = Readonly<Record<"loose" | "stitch", string>>;

/** What is known of a disc: how it has gone, how far the probe has been, and where the probe lifted the rim. */
const CASES = [
  { shift: "none", probed: "nowhere", lifts: "nothing" },
  { shift: "none", probed: "all", lifts: "nothing" },
  { shift: "none", probed: "all", lifts: "front" },
  { shift: "none", probed: "all", lifts: "back" },
  { shift: "front", probed: "nowhere", lifts: "nothing" },
  { shift: "back", probed: "nowhere", lifts: "nothing" },
  { shift: "centre", probed: "nowhere", lifts: "nothing" },
  { shift: "front", probed: "front", lifts: "front" },
  { shift: "back", probed: "back", lifts: "back" },
] as const;

/** The place to which a shift points, the side that the disc has left: from memory, to be verified. A series of margins bears out front and back, and nothing that was read the centre. */
const POINTS_TO: Readonly<Record<string, string>> = { front: "back", back: "front", centre: "outer" };
/** Where a disc lies that has gone. */
const LIES_AT: Readonly<Record<string, string>> = { front: "front", back: "back", centre: "notch" };

const OPEN = "untold";
const PLACES = ["front", "back", "outer", "both", "notch", "nowhere", OPEN] as const;

const placesOf = ({ shift = "", lifts = "" }: About): readonly string[] => {
  const pointed = POINTS_TO[shift];
  return [...(pointed === undefined ? [] : [pointed]), ...(lifts === "nothing" ? [] : [lifts])];
};

const placeIn = (about: About): string => {
  const places = placesOf(about);
  if (places.length > 1) return "both";
  return places[0] ?? (about["probed"] === "all" ? "nowhere" : OPEN);
};

const picksFor = (place: string): Picks => ({ loose: place, stitch: place });
const truth = ({ about }: Draw): Picks => picksFor(placeIn(about));

/** The thought behind a place that is not the right one. */
const thoughtOf = (place: string, about: About): string => {
  if (place === OPEN) return "undecided";
  if (place === "nowhere") return "not-torn-so-stable";
  if (placeIn(about) === "both" && ["front", "back"].includes(place)) return place === about["lifts"] ? "probed-place-only" : "shift-only";
  if (place === LIES_AT[about["shift"] ?? ""]) return "where-it-lies";
  return place === "notch" ? "no-rim-there" : `${place}-without-sign`;
};

const THOUGHTS = ["where-it-lies", "probed-place-only", "shift-only", "not-torn-so-stable", "undecided", "no-rim-there", "front-without-sign", "back-without-sign", "outer-without-sign", "both-without-sign"] as const;

/** Every wrong place is one thought's, so every wrong pick has a name. */
const placeOfThought = (id: string) => ({ about }: Draw): Picks | null => {
  const place = PLACES.find((one) => one !== placeIn(about) && thoughtOf(one, about) === id);
  return place === undefined ? null : picksFor(place);
};

/** Where the scan shows a disc. */
const SEEN_AT: Readonly<Record<string, string>> = { none: "where it belongs", front: "too far forward, and a little toward the notch", back: "too far back, and a little toward the notch", centre: "too far toward the notch" };
const ROUND = "The probe has been round the whole rim, front, outer side and back:";
const probed = ({ probed: reach = "", lifts = "" }: About): string => {
  if (reach === "nowhere") return "The rim has not been probed yet.";
  if (reach !== "all") return `The probe has reached only the ${reach} so far, and there the rim lifts.`;
  if (lifts === "nothing") return `${ROUND} it holds everywhere.`;
  return `${ROUND} ${lifts === "front" ? "in front" : "at the back"} it lifts, elsewhere it holds.`;
};
const seen = (say: Say): string => `On the scan the disc lies ${SEEN_AT[say.about("shift")] ?? ""}. No tear is seen. ${probed(say.draw.about)}`;
const complaint = (say: Say): string => `The knee ${say.about("complaint")}.`;

const NAMES: Readonly<Record<string, string>> = {
  front: "In front", back: "At the back", outer: "On the outer side, toward the back", both: "In front and at the back", notch: "On the side of the notch", nowhere: "Nowhere: the rim holds",
  untold: "No place can be named yet",
};
const name = (say: Say): string => NAMES[placeIn(say.draw.about)] ?? "";

/** What of the lookup was read, and what was not. */
const MEMORY = "The four kinds of shift are a review’s, read in its abstract; which place belongs to which is from memory, to be checked.";
const SERIES = "In a series of children a front margin that had moved inwards went with a rim loose in front, and a back margin with one loose at the back (abstract read).";
/** What a shift says of a disc: how it lies, and which side it has left. */
const LEFT: Readonly<Record<string, readonly [string, string]>> = { front: ["forward", "the back"], back: ["back", "the front"], centre: ["toward the notch", "the outer side, toward the back"] };
const why = (say: Say): string => {
  const [lies, left] = LEFT[say.about("shift")] ?? [];
  return left === undefined ? "It has not gone anywhere, so no shift names a place; the probe alone can." : `It lies ${lies}: it has left ${left}, and there it is probed first.`;
};
const found = (say: Say): string => {
  if (say.about("probed") === "nowhere") return "it has not spoken yet.";
  return say.about("probed") === "all" ? "it has been all the way round, and what it found counts." : "what it lifts is a second place, not another opinion about the first.";
};
const isOpen = (say: Say): boolean => placeIn(say.draw.about) === OPEN;

const OF_WHOM = "of the patients of a registry of operated discs, children and adolescents";
const MORE_TEXT = `More than one loose place was met in ${MORE_SAID} ${OF_WHOM}; whether of all of them, or of those with a loose rim, its abstract leaves open.`;
const LOOSE_TEXT = `The rim was loose in ${LOOSE_SAID} ${OF_WHOM}; how many of these were torn the number does not say.`;
const here = (say: Say): string => {
  if (say.about("lifts") !== "nothing") return "And here the probe has lifted it.";
  return say.about("shift") === "none" ? "And this one has not been probed." : "And this one has left its place.";
};
const withoutSign = (where: string) => (say: Say): readonly string[] => [
  isOpen(say) ? `The disc lies where it belongs, and nobody has probed it: to name ${where} is a guess.` : `Nothing that is told points to ${where}. ${say.about("probed") === "all" ? "The probe was there, and the rim held." : why(say)}`,
];

/** 09j: where the rim of a displaced discoid meniscus is loose, and where it is stabilised. */
export const rimStability: NameFamily = {
  kind: "name",
  id: "rim-stability",
  code: "09j",
  module: "M09",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m09-discoid"],
  reads: [LOOSE, MORE_PLACES, TYPES, FRONT_MARGIN, BACK_MARGIN],
  sources: [{ source: "discoid-registry-2023", entry: LOOSE }, { source: "discoid-types-2020", entry: TYPES }, { source: "rim-loose-2019", entry: FRONT_MARGIN }],
  cautions: ["C3"],
  givens: [],
  attributes: [{ id: "loose", options: PLACES }, { id: "stitch", options: PLACES }],
  draw: (chance) => ({
    givens: {},
    about: { ...chance.pick(CASES), child: chance.pick(CHILDREN), age: chance.pick(["6", "8", "9", "11", "12", "14"]), side: chance.pick(SIDES), complaint: chance.pick(["snaps", "locks", "hurts on stairs"]), hospital: chance.pick(HOSPITALS) },
  }),
  truth,
  slips: THOUGHTS.map((id) => ({ id, gives: placeOfThought(id) })),
  words: {
    en: {
      title: "Where the rim is loose",
      stems: [
        (say) => [`${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee: a discoid lateral meniscus. ${complaint(say)} ${seen(say)}`],
        (say) => [`${say.about("hospital")} plans an operation on the disc of ${say.about("child")}, ${say.about("age")}: lateral meniscus, ${say.about("side")} knee. ${complaint(say)}`, seen(say)],
        (say) => [`“Discoid, lateral, ${say.about("side")}, not torn”: so much stands in the record of ${say.about("child")}, ${say.about("age")}. ${complaint(say)} ${say.about("hospital")} asks where a stitch would go.`, seen(say)],
      ],
      question: "The place of each shift is from memory here, to be checked. By the shift, and by the probe as far as it has been: where is the rim expected to be loose, and where is it stabilised if the probe agrees?",
      givens: {},
      attributes: { loose: "Expected to be loose", stitch: "Stabilised" },
      options: NAMES,
      slips: {
        "where-it-lies": { name: "stabilised where it moved to", because: (say) => [`That is where the disc lies now, not where it has let go. ${why(say)}`] },
        "probed-place-only": { name: "one place only: what the probe met", because: () => ["The probe has met one place, and the disc has left another. Both count.", MORE_TEXT] },
        "shift-only": { name: "one place only: what the shift says", because: () => ["The shift points to one place, and the probe has lifted the rim at another. Both count.", MORE_TEXT] },
        "not-torn-so-stable": { name: "not torn, so stable", because: (say) => [`Not torn is not the same as firm. ${LOOSE_TEXT} ${here(say)}`] },
        undecided: { name: "left open although something is told", because: (say) => [say.about("probed") === "all" ? "The probe has been all the way round, and it answers. Nothing more is to come." : `The probe has the last word, and still a place can be named to begin with. ${why(say)}`] },
        "no-rim-there": { name: "the side without a rim", because: () => ["Toward the notch the disc has no rim on a capsule. The rim is looked for in front, on the outer side and at the back."] },
        "front-without-sign": { name: "the front named without a sign", because: withoutSign("the front") },
        "back-without-sign": { name: "the back named without a sign", because: withoutSign("the back") },
        "outer-without-sign": { name: "the outer side named without a sign", because: withoutSign("the outer side") },
        "both-without-sign": { name: "two places where fewer are told", because: (say) => [`A second place is looked for every time, and named when it is found. ${say.about("probed") === "all" ? "Here the probe has been round, and has not found two." : "Here nothing points to two."}`, MORE_TEXT] },
      },
      working: (say) => [
        "First: which place has the disc left? Not torn says nothing about that.",
        ...(say.about("shift") === "none" ? [] : [MEMORY, ...(say.about("shift") === "centre" ? [] : [SERIES])]),
        why(say),
        `Then the probe: ${found(say)}`,
        `${name(say)}.`,
      ],
      right: (say) => [`${name(say)}. ${why(say)}`, say.about("probed") === "all" ? "The probe has had the last word." : "Then the probe goes all the way round, and has the last word."],
      off: (say) => [`First the way in which the disc has gone, then what the probe has met. ${why(say)}`],
      moves: (say) => [say.about("shift") === "none" ? "What the probe meets. A disc that lies in its place names no place by itself." : "The way in which the disc has gone, and each place that the probe meets besides."],
      turns: (say) => [say.about("shift") === "none" ? "A place is right once the probe has lifted the rim there, and none is right once it has been all the way round and lifted nothing." : "The back is right for a disc that lies forward, the front for one that lies back, the outer side for one that lies toward the notch. Any other is added once the probe has lifted the rim there."],
    },
  },
};
