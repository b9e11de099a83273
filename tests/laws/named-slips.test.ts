import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../src/bank/catalogue.ts";
import { draw, grade } from "../../src/bank/index.ts";
import { slipResponses } from "../../src/engine/question/explain.ts";
import type { SumFamily } from "../../src/engine/question/family.ts";
import { type AskSpec, isSays, type Solution } from "../../src/engine/question/family-head.ts";
import type { Item } from "../../src/engine/question/item.ts";
import { plainDraw } from "../../src/engine/question/kind-rules.ts";
import type { Response } from "../../src/engine/question/response.ts";
import { asAsked } from "../../src/engine/quantity/round.ts";
import { howMany } from "../support/how-many.ts";

/** A goal of the plan: of 200 plausible wrong answers to a family of sums, made by its listed errors, at least 95 in 100 get the name of the error. */
const ANSWERS = howMany(200, 40);
const LEAST_SHARE = 0.95;
const MOST_SEEDS = 200;
/** Results of functions are compared at six decimals. */
const EXACT_PLACES = 6;

type Typed = (value: number, ask: AskSpec) => string;

const asked: Typed = (value, { roundTo, rounding }) => asAsked(value, roundTo, rounding);
const withComma: Typed = (value, ask) => {
  const text = asked(value, ask);
  // Three digits behind a comma could be thousands; whoever types so is asked again.
  return /\.\d{3}$/.test(text) ? text : text.replace(".", ",");
};

/** Ways in which a learner types the same wrong number: rounded as asked, with a comma, with the unit, or before rounding. */
const WAYS: Readonly<Record<string, Typed>> = {
  "as asked": asked,
  "with a comma": withComma,
  "with the unit": (value, ask) => `${asked(value, ask)} ${ask.unit}`,
  "before rounding": (value) => value.toFixed(EXACT_PLACES),
};

const typedIn = (family: SumFamily, solution: Solution, way: Typed): Response => {
  if (isSays(solution)) return { kind: "sum", says: solution.says };
  const texts = Object.fromEntries(family.asks.map((ask) => [ask.id, way(solution[ask.id] as number, ask)]));
  const [only, ...others] = Object.values(texts);
  return others.length === 0 && only !== undefined ? { kind: "sum", text: only } : { kind: "sum", texts };
};

interface Wrong {
  readonly item: Item;
  readonly way: string;
  readonly response: Response;
  /** Errors that give this value on this draw. */
  readonly names: readonly string[];
}

const ways = Object.entries(WAYS);

/** Wrong answers to one draw: each error that applies, typed in the next way. */
const wrongOf = (family: SumFamily, seed: number): readonly Wrong[] => {
  const item = draw(family.id, seed);
  const applying = slipResponses(family, item);
  return applying.flatMap(({ id, response: typed }, place) => {
    const gives = family.slips.find((slip) => slip.id === id)?.gives(plainDraw(item));
    const [way, type] = ways[(seed + place) % ways.length] ?? ["as asked", asked];
    const names = applying.filter((other) => JSON.stringify(other.response) === JSON.stringify(typed)).map((other) => other.id);
    return gives ? [{ item, way, response: typedIn(family, gives, type), names }] : [];
  });
};

const wrongAnswers = (family: SumFamily): readonly Wrong[] => {
  const found: Wrong[] = [];
  for (let seed = 0; seed < MOST_SEEDS && found.length < ANSWERS; seed += 1) found.push(...wrongOf(family, seed));
  return found.slice(0, ANSWERS);
};

const isNamed = ({ item, response, names }: Wrong): boolean => {
  const { verdict, slip } = grade(item, response);
  return verdict !== "right" && slip !== undefined && names.includes(slip);
};

const sums = CATALOGUE.flatMap(([newest]) => (newest?.kind === "sum" ? [newest] : []));

describe("the errors that a family of sums lists", () => {
  it("are looked for in every such family of the bank, in every way of typing", () => {
    expect(sums.length).toBeGreaterThan(60);
    const [first] = sums;
    expect(first && new Set(wrongAnswers(first).map(({ way }) => way)).size).toBe(ways.length);
  });

  it.each(sums.map((family) => [family.id, family] as const))("%s are named when they are made", (_, family) => {
    const wrong = wrongAnswers(family);
    const missed = wrong.filter((one) => !isNamed(one));
    expect(wrong).toHaveLength(ANSWERS);
    expect(missed.filter(({ way }) => way === "as asked").map(({ item, response }) => [item.seed, response])).toEqual([]);
    expect({ share: 1 - missed.length / wrong.length, missed: missed.slice(0, 3).map(({ item, way, response, names }) => ({ seed: item.seed, way, response, names })) }).toMatchObject({ share: expect.toSatisfy((share: number) => share >= LEAST_SHARE) });
  });

  it("are not named where nobody made them", () => {
    const strays = sums.filter(({ asks }) => asks.length === 1).map(({ id }) => grade(draw(id, 1), { kind: "sum", text: "123456.789" }).slip);
    expect(strays.filter((slip) => slip !== undefined)).toEqual([]);
  });
});
