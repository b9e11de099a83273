import { idOfThing } from "../engine/kit/local-list.ts";
import { canonicalJson } from "../engine/record/canonical.ts";
import { packed, withCheck } from "../engine/record/signs.ts";
import { stepOrder } from "../engine/question/step-order.ts";
import { sha256Words } from "../engine/random/sha256.ts";
import type { CardWords } from "../facts/card-words.ts";
import { edgesOf, type GraphData } from "../facts/graph.ts";
import type { LocalTables } from "../facts/local-list.ts";
import { filled } from "../facts/words.ts";

/** Whose rule a line is, as a sign that stands behind it. */
export type LineSource = "local list" | "device instructions" | "common practice" | "author";

export interface CardLine {
  readonly text: string;
  /** True where leaving the step, or changing its place, can hurt somebody. */
  readonly isCritical: boolean;
  readonly sources: readonly LineSource[];
}

export interface CardNote {
  readonly id: string;
  readonly text: string;
}

export interface CountRow {
  readonly thing: string;
  /** Pieces in the pack, or how they come where the pack holds none. */
  readonly comes: string;
}

/** Everything that a trolley card prints, in the order of its print. */
export interface TrolleyCard {
  readonly hospital: string;
  readonly list: string;
  /** Changes with every word and number that the card prints. */
  readonly version: string;
  readonly groups: readonly { readonly title: string; readonly lines: readonly CardLine[] }[];
  readonly counts: readonly CountRow[];
  readonly drill: readonly CardLine[];
  readonly waste: readonly { readonly stream: string; readonly things: string }[];
  /** Cautions at its foot, the heaviest first. */
  readonly notes: readonly CardNote[];
}

export interface CardMadeFrom {
  readonly tables: LocalTables;
  readonly setUp: GraphData;
  readonly drill: GraphData;
  readonly words: CardWords;
  readonly notes: readonly CardNote[];
}

const VERSIONS = 1_048_576;
const GROUP = 3;

/** Twenty bits of the hash of all that is printed, as a typed code of six signs: a change that the paper does not show asks for no new print. */
const versionOf = (printed: unknown): string => {
  const [first = 0] = sha256Words(canonicalJson(printed));
  return withCheck(packed([[first % VERSIONS, VERSIONS]]), { purpose: "card", groupOf: GROUP });
};

const lineOf = (graph: GraphData, id: string, text: string): CardLine => {
  const edges = graph.edges.filter(({ before, after }) => before === id || after === id);
  const whose = edges.filter(({ before }) => before === id);
  return {
    text,
    isCritical: whose.some(({ critical }) => critical === true),
    sources: [...new Set((whose.length > 0 ? whose : edges).map((edge) => edge.whose as LineSource))].sort(),
  };
};

const keptIn = ({ pack }: LocalTables): string => pack.things.filter(({ keep }) => keep === true).map(({ thing, more, pieces }) => (pieces > 1 ? more : thing)).join(", ");

/** The set-up in its order, cut into groups at the steps that cannot be undone; without the lines of what is kept where the list keeps nothing. */
const groupsOf = ({ tables, setUp, words }: CardMadeFrom): TrolleyCard["groups"] => {
  const kept = keptIn(tables);
  const order = stepOrder(edgesOf(setUp), setUp.cards.filter((id) => words.steps[id] !== undefined && (kept !== "" || !words.keepSteps.includes(id))));
  let from = 0;
  const groups = words.groups.map(({ title, until }) => {
    const end = until === "" ? order.length : order.indexOf(until) + 1;
    const own = order.slice(from, Math.max(from, end));
    from = Math.max(from, end);
    return { title, lines: own.map((id) => lineOf(setUp, id, filled(words.steps[id] ?? "", { kept }))) };
  });
  return groups.filter(({ lines }) => lines.length > 0);
};

const countsOf = ({ tables: { pack, counts }, words }: CardMadeFrom): readonly CountRow[] => {
  const own = pack.things.filter((one) => one.class !== "not counted" && (one.shape !== "cap" || counts.capsAndLids === "counted"));
  const inPack = new Set(own.map((one) => one.class));
  // What comes in packets comes beside the pack too: the needles of the sutures are counted, whatever needles the pack holds.
  const others = counts.classes.filter((one) => !inPack.has(one.class) || one.comesIn > 1);
  return [
    ...own.map(({ thing, more, pieces, size }) => ({ thing: `${pieces > 1 ? more : thing}${size === undefined ? "" : `, ${size}`}`, comes: String(pieces) })),
    ...others.map((one) => ({ thing: inPack.has(one.class) ? filled(words.others, { class: one.class }) : one.class, comes: filled(one.comesIn === 1 ? words.comesSingly : words.comesIn, { count: String(one.comesIn) }) })),
  ];
};

const wasteOf = ({ tables: { waste }, words }: CardMadeFrom): TrolleyCard["waste"] =>
  Object.entries(words.streams).flatMap(([to, stream]) => {
    const things = waste.goes.filter((one) => one.to === to).map(({ thing }) => words.things[idOfThing(thing)] ?? thing);
    return things.length === 0 ? [] : [{ stream, things: things.join(", ") }];
  });

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The trolley card of a local list and two step graphs: the same that the questions are drawn from. */
export const trolleyCard = (from: CardMadeFrom): TrolleyCard => {
  const { tables, drill, words, notes } = from;
  const card = {
    hospital: tables.pack.hospital,
    list: tables.pack.list,
    groups: groupsOf(from),
    counts: countsOf(from).map((row) => ({ ...row, thing: capital(row.thing) })),
    drill: stepOrder(edgesOf(drill), drill.cards.filter((id) => words.drill[id] !== undefined)).map((id) => lineOf(drill, id, words.drill[id] ?? "")),
    waste: wasteOf(from),
    notes,
  };
  return { ...card, version: versionOf(card) };
};
