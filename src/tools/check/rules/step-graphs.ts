import { graphSchema, WHOSE } from "../../../schemas/graph.ts";
import type { Finding } from "../finding.ts";
import type { JsonFile } from "../json-file.ts";
import { nearest } from "../nearest.ts";
import { type CourseRule, LEAVE_OUT } from "../rule.ts";
import { type DataFile, schemaFindings } from "../schema-findings.ts";

const RULE = "step graph";

const GRAPH_FILE: DataFile = {
  rule: RULE,
  schema: graphSchema,
  whole: "a step graph",
  help: {
    graph: ["the name of the file without its ending", '"graph": "set-up"'],
    title: ["a title as text", '"title": "Open, connect, keep"'],
    cards: ["a list of cards, each a name in small letters and hyphens", '"cards": ["list-read", "pack-checked", "pack-opened"]'],
    edges: ["a list of edges", '"edges": []'],
    before: ["a card of this graph", '"before": "pack-checked"'],
    after: ["a card of this graph", '"after": "pack-opened"'],
    reason: ["one sentence that says why, with its full stop", '"reason": "After opening, date and seal can no longer be read for sure."'],
    whose: [WHOSE.join(", "), '"whose": "common practice"'],
    critical: ["true where breaking it can hurt somebody; left out elsewhere", '"critical": true'],
  },
  repair: (field, written) => {
    const meant = field === "whose" ? nearest(String(written), WHOSE) : null;
    return meant === null ? null : `"${meant}"`;
  },
};

interface Edge {
  readonly before: string;
  readonly after: string;
}

type Row = Readonly<Record<string, unknown>>;

const listIn = (file: JsonFile, name: string): readonly unknown[] => {
  const list = (file.value as Row | undefined)?.[name];
  return Array.isArray(list) ? list : [];
};
const edgesIn = (file: JsonFile): readonly Edge[] => listIn(file, "edges").map((row) => ({ before: String((row as Row)["before"]), after: String((row as Row)["after"]) }));
const cardsIn = (file: JsonFile): readonly string[] => listIn(file, "cards").map(String);

const at = (file: JsonFile, edge: number, field?: string): { readonly start: number; readonly end: number } => file.located().spanOf(["edges", edge, ...(field === undefined ? [] : [field])]);

/** An end of an edge that is no card of the graph. */
const unknownCards = (file: JsonFile): readonly Finding[] =>
  edgesIn(file).flatMap((edge, index) =>
    (["before", "after"] as const).filter((end) => edge[end] !== "undefined" && !cardsIn(file).includes(edge[end])).map((end): Finding => {
      const meant = nearest(edge[end], cardsIn(file));
      const head = { source: file, offset: at(file, index, end).start, rule: RULE, found: `the card "${edge[end]}"` };
      return meant === null ? { ...head, expected: `a card of this graph: ${cardsIn(file).join(", ")}`, write: LEAVE_OUT } : { ...head, expected: `a card of this graph; the nearest is "${meant}"`, edits: [{ ...at(file, index, end), text: `"${meant}"` }] };
    }));

/** An edge that stands twice. */
const twice = (file: JsonFile): readonly Finding[] => {
  const names = edgesIn(file).map(({ before, after }) => `"${before}" before "${after}"`);
  return names.flatMap((name, index): readonly Finding[] => (names.indexOf(name) === index ? [] : [{ source: file, offset: at(file, index).start, rule: RULE, found: `${name}, for the second time`, expected: "each edge once", write: LEAVE_OUT }]));
};

/** Cards that can be laid one after another; what is left over runs in a circle. */
const leftOver = (cards: readonly string[], edges: readonly Edge[]): readonly string[] => {
  const next = cards.find((card) => edges.every(({ before, after }) => after !== card || !cards.includes(before)));
  return next === undefined ? cards : leftOver(cards.filter((card) => card !== next), edges);
};

/** Edges that run in a circle, so that no order keeps them all: named at the last of them, for the ones before it were there first. */
const circles = (file: JsonFile): readonly Finding[] => {
  const edges = edgesIn(file);
  const behind = leftOver(cardsIn(file), edges);
  // From the other end too, so that cards that only hang on the circle are not named.
  const circle = leftOver(behind, edges.filter((edge) => behind.includes(edge.before) && behind.includes(edge.after)).map(({ before, after }) => ({ before: after, after: before })));
  const inside = edges.flatMap((edge, index) => (circle.includes(edge.before) && circle.includes(edge.after) ? [index] : []));
  const last = inside.at(-1);
  return last === undefined ? [] : [{ source: file, offset: at(file, last).start, rule: RULE, found: `a circle: ${circle.join(", ")}`, expected: "an order that keeps every edge; one of these must go", write: LEAVE_OUT }];
};

/** A card that no edge names: its place would be free, and it would be no question. */
const idle = (file: JsonFile): readonly Finding[] => {
  const named = new Set(edgesIn(file).flatMap(({ before, after }) => [before, after]));
  return cardsIn(file).flatMap((card, index): readonly Finding[] => (named.has(card) ? [] : [{ source: file, offset: file.located().spanOf(["cards", index]).start, rule: RULE, found: `the card "${card}", which no edge names`, expected: "cards that must stand before or after another", write: LEAVE_OUT }]));
};

const misnamed = (file: JsonFile): readonly Finding[] => {
  const name = file.file.split("/").at(-1)?.replace(/\.json$/, "") ?? "";
  const graph = (file.value as Row | undefined)?.["graph"];
  return typeof graph !== "string" || graph === name ? [] : [{ source: file, offset: file.located().spanOf(["graph"]).start, rule: RULE, found: `graph "${graph}"`, expected: `"${name}", the name of the file`, edits: [{ ...file.located().spanOf(["graph"]), text: `"${name}"` }] }];
};

/** Every step graph holds to its schema, knows its cards, gives a reason for each edge, and does not run in a circle. */
export const stepGraphs: CourseRule = ({ graphs }) => graphs.flatMap((file) => [...schemaFindings(file, GRAPH_FILE), ...[misnamed, unknownCards, twice, circles, idle].flatMap((rule) => rule(file))]);
