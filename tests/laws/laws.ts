import { beforeAll, describe, expect, it } from "vitest";
import { answerTo, compute, draw, explain, families, type FamilyEntry, grade, slipsOf } from "../../src/bank/index.ts";
import { CATALOGUE } from "../../src/bank/catalogue.ts";
import { slipResponses } from "../../src/engine/question/explain.ts";
import type { Family } from "../../src/engine/question/family.ts";
import type { Item, SumItem } from "../../src/engine/question/item.ts";
import type { Response } from "../../src/engine/question/response.ts";
import { VERDICTS } from "../../src/engine/question/verdict.ts";

/** Laws that every family keeps; a new family is tested by being listed. Each draw is made once, held to all laws, and forgotten. */
const DRAWS = Number(process.env["DRAWS"] ?? 10_000);
/** How many draws the costly laws look at. */
const FEW = Math.min(200, DRAWS);
const MANY = 500;
const LEAST_FOR_DEAD = 2000;

/** A share of the families, so that several files can walk through the bank side by side. */
export const lawsFor = (part: number, parts: number): void => {
  describe.each(families.filter((_, index) => index % parts === part).map(({ id }) => id))("%s", keepsTheLaws);
};

/** What a sentence looks like where a value was missing. */
const HOLE = /undefined|NaN|\[object|\$\{|Infinity/;

const isSum = (item: Item): item is SumItem => item.kind === "sum";

/** Values just beyond the accepted span on the unsafe side of each ask, all else right. */
const unsafeResponses = (item: SumItem, right: Response): readonly Response[] => {
  if (right.kind !== "sum" || "says" in right) return [];
  const texts: Record<string, string> = "texts" in right ? right.texts : { [item.asks[0]?.id ?? ""]: right.text };
  const { accepted } = grade(item, right);
  const typed = (id: string, text: string): Response =>
    item.asks.length === 1 ? { kind: "sum", text } : { kind: "sum", texts: { ...texts, [id]: text } };
  return item.asks.flatMap((ask) => {
    const span = accepted[ask.id];
    if (ask.safeSide === "none" || !span) return [];
    const step = Number(ask.roundTo);
    const beyond = ask.safeSide === "down" ? Number(span.to) + step : Number(span.from) - step;
    return [typed(ask.id, beyond.toFixed(3)), ...(ask.safeSide === "down" ? [typed(ask.id, String(Number(span.to) * 10))] : [])];
  });
};

const isOnGrid = (text: string, step: number): boolean => {
  const steps = Number(text) / step;
  return Math.abs(steps - Math.round(steps)) < 1e-6;
};

/** One draw with its right answer, and what is known of its family. */
interface Drawn {
  readonly family: FamilyEntry;
  readonly declared: Family;
  readonly item: Item;
  readonly right: Response;
  readonly seed: number;
}

const STRANGE: readonly Response[] = [{ kind: "sum", text: "1" }, { kind: "order", cards: [] }, { kind: "tray", found: ["?"] }, { kind: "name", picks: {} }, { kind: "judge", picks: "", reasons: [] }, { kind: "count", byClass: {} }, { kind: "range", from: "", to: "x" }, { kind: "mark", points: {} }, { kind: "line", angleDeg: "?", depthMm: "" }, { kind: "chain", steps: [] }];

const failsRepeat = ({ family, item, seed }: Drawn): boolean => seed % 7 === 0 && JSON.stringify(item) !== JSON.stringify(draw(family.id, seed));

const failsOwnAnswer = ({ item, right }: Drawn): boolean => {
  const { verdict, score } = grade(item, right);
  return verdict !== "right" || score !== 1;
};

const failsSlips = ({ family, declared, item }: Drawn, used: Set<string>): boolean => {
  const slips = slipResponses(declared, item);
  return slips.length < 2 || slips.some(({ id, response }) => {
    used.add(id);
    const { verdict, slip, score } = grade(item, response);
    return verdict === "right" || slip !== id || !(score >= 0 && score < 1) || (verdict === "unsafe-side" && !family.unsafe);
  });
};

/** What the public face says of slips: the same responses, and which of them are unsafe. */
const failsPublicSlips = ({ declared, item, seed }: Drawn): boolean => {
  if (seed >= FEW) return false;
  const told = slipsOf(item);
  const made = slipResponses(declared, item).map((slip) => ({ ...slip, unsafe: grade(item, slip.response).verdict === "unsafe-side" }));
  return JSON.stringify(told) !== JSON.stringify(made);
};

const failsUnsafe = ({ family, item, right }: Drawn): boolean =>
  isSum(item) && unsafeResponses(item, right).some((response) => (grade(item, response).verdict === "unsafe-side") !== family.unsafe);

const failsNone = ({ family, item, right }: Drawn): boolean => {
  if (!isSum(item)) return false;
  const isNone = "says" in right;
  const texts = Object.fromEntries(item.asks.map((ask) => [ask.id, "5"]));
  const value: Response = item.asks.length === 1 ? { kind: "sum", text: "5" } : { kind: "sum", texts };
  const { verdict } = grade(item, isNone ? value : { kind: "sum", says: "none" });
  return verdict !== (isNone && family.unsafe ? "unsafe-side" : "safe-side");
};

const failsGivens = ({ family, item }: Drawn): boolean =>
  item.givens.some(({ key, text, label }) => {
    const spec = family.givens.find((given) => given.key === key);
    const value = Number(text);
    return !spec || !Number.isFinite(value) || value < spec.least || value > spec.greatest || !isOnGrid(text, spec.step) || label === "" || label === key;
  });

const failsFinite = ({ declared, item }: Drawn): boolean => {
  if (!isSum(item) || declared.kind !== "sum") return false;
  const givens = Object.fromEntries(item.givens.map(({ key, text }) => [key, Number(text)]));
  const solution = declared.solve(givens, item.about);
  return typeof solution["says"] !== "string" && !Object.values(solution).every((value) => Number.isFinite(value));
};

const failsStrange = ({ item, seed }: Drawn): boolean =>
  seed < FEW && STRANGE.some((response) => {
    const { verdict } = grade(item, response);
    return !VERDICTS.includes(verdict) || (response.kind !== item.kind && verdict !== "not-recognised");
  });

const failsPanels = ({ declared, item, right, seed }: Drawn): boolean => {
  if (seed >= FEW) return false;
  const responses: readonly Response[] = [right, ...slipResponses(declared, item).map(({ response }) => response), { kind: "sum", says: "ask-locally" }, { kind: "sum", text: "3.7" }];
  return responses.filter(({ kind }) => kind === item.kind).some((response) => {
    const text = explain(item, response);
    return text.happened.length === 0 || text.working.length === 0 || HOLE.test(JSON.stringify(text));
  });
};

const failsWords = ({ item, seed }: Drawn): boolean => seed < MANY && HOLE.test(JSON.stringify(item));

const LAWS: Readonly<Record<string, (drawn: Drawn, used: Set<string>) => boolean>> = {
  "draws the same item from the same seed": failsRepeat,
  "takes its own answer, typed as asked, as right": failsOwnAnswer,
  "names every slip, never takes one as right, and scores it below 1": failsSlips,
  "tells of every slip what it gives, and whether that is unsafe": failsPublicSlips,
  "calls the unsafe side unsafe, also for a power of ten": failsUnsafe,
  "answers a value with the unsafe side where none is right, and none where a value is right with the safe side": failsNone,
  "prints givens on their grid and inside the stated range, each with a label": failsGivens,
  "computes a finite answer from the displayed givens": failsFinite,
  "uses only the listed verdicts, whatever is sent": failsStrange,
  "explains its answer, every slip and a stray value, with three full panels and no hole": failsPanels,
  "has no hole in any sentence": failsWords,
};

/** Seeds that broke each law, and the slips that were met. */
const walk = (family: FamilyEntry, declared: Family): { readonly broken: Readonly<Record<string, readonly number[]>>; readonly used: ReadonlySet<string> } => {
  const broken: Record<string, number[]> = Object.fromEntries(Object.keys(LAWS).map((law) => [law, []]));
  const used = new Set<string>();
  for (let seed = 0; seed < DRAWS; seed += 1) {
    const item = draw(family.id, seed);
    const drawn = { family, declared, item, right: answerTo(item), seed };
    for (const [law, fails] of Object.entries(LAWS)) if (fails(drawn, used)) broken[law]?.push(seed);
  }
  return { broken, used };
};

const keepsTheLaws = (id: string): void => {
  const family = families.find((one) => one.id === id);
  const declared = CATALOGUE.flat().find((one) => one.id === id);
  if (!family || !declared) throw new Error(`${id} is not listed`);
  const held: { walked?: ReturnType<typeof walk> } = {};
  beforeAll(() => {
    held.walked = walk(family, declared);
  });

  it.each(Object.keys(LAWS))("%s", (law) => expect(held.walked?.broken[law]).toEqual([]));

  it("offers every slip in some draw", () => {
    const dead = declared.slips.map((slip) => slip.id).filter((slip) => !held.walked?.used.has(slip));
    expect(DRAWS >= LEAST_FOR_DEAD ? dead : []).toEqual([]);
  });

  if (declared.kind === "sum") it("refuses to compute without its givens", () => expect(() => compute(id, {})).toThrow(/^givens must hold/));

  it("has at least three wordings, and a sentence for every slip", () => {
    const words = declared.words.en;
    expect(words.stems.length).toBeGreaterThanOrEqual(3);
    expect(Object.keys(words.slips).sort()).toEqual(declared.slips.map((slip) => slip.id).sort());
  });
};
