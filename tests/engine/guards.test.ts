import { describe, expect, it } from "vitest";
import * as engine from "../../src/engine/index.ts";

type Name = keyof typeof engine;
/** Names of the positional parameters, and one legal call. */
interface Call {
  readonly parameters: readonly string[];
  readonly legal: readonly unknown[];
}

const answer = (day: number) => ({ day, right: true, unsafe: false });
const options = (legal: Record<string, unknown>, ...rest: unknown[]): Call => ({
  parameters: ["options", "answers"],
  legal: [legal, ...rest],
});

const CALLS: Record<Name, Call> = {
  zoneDepthMm: options({ junctionWidthMm: 14, anteriorWidthMm: 11, separationMm: 8 }),
  zoneAngleDeg: options({ nearEdgeMm: 48, farEdgeMm: 52, widthMm: 14 }),
  depthWindowMm: options({ entryToJunctionMm: 5, throughCapsuleMm: 4, junctionToStructureMm: 9, marginMm: 3 }),
  stopSettingMm: { parameters: ["window", "stopsMm"], legal: [{ leastMm: 9, greatestMm: 12 }, [8, 10, 12]] },
  clearanceMm: options({
    entry: { xMm: 0, yMm: 0 },
    tip: { xMm: 3, yMm: 20 },
    centre: { xMm: 6, yMm: 10 },
    radiusMm: 2,
    needleRadiusMm: 0.5,
  }),
  standOffDeg: options({ rangeMm: 50, radiusMm: 3, marginMm: 3 }),
  stitchCount: options({ tearMm: 25, endMarginMm: 2.5, greatestSpacingMm: 5 }),
  fieldWidthMm: options({ distanceMm: 10, fieldDeg: 90 }),
  fieldInLiquidDeg: options({ fieldInAirDeg: 105, refractiveIndex: 1.335 }),
  sweptConeDeg: options({ viewDeg: 30, fieldDeg: 90 }),
  headPressureMmHg: options({ heightCm: 100, densityKgPerM3: 1004.6 }),
  annularFlow: options({
    scopeMm: 2.3,
    boreMm: 2.7,
    lengthMm: 100,
    dropMmHg: 60,
    viscosityMPaS: 1.015,
    densityKgPerM3: 1004.6,
    eccentricity: 0.5,
  }),
  cuffWidthCm: options({ girthCm: 36 }),
  cappedDoseMg: options({ weightKg: 22, mgPerKg: 30, capMg: 2000 }),
  mostVolumeMl: options({ weightKg: 22, limitMgPerKg: 2, percent: 0.25 }),
  gs1CheckDigit: { parameters: ["text"], legal: ["730001100001"] },
  shareNearer: options({ distanceMm: 4, meanMm: 5.2, sdMm: 1.6 }),
  twoByTwo: options({ tp: 43, fp: 12, fn: 26, tn: 26 }),
  predictiveValues: options({ sensitivity: 0.793, specificity: 0.92, baseRate: 0.05 }),
  baseRateBehind: options({ sensitivity: 0.793, specificity: 0.92, ppv: 0.343 }),
  wilson: options({ events: 21, total: 1015 }),
  cohenKappa: { parameters: ["table"], legal: [[[20, 5], [10, 15]]] },
  knowledgeAfter: options({ known: 0.2, learn: 0.15, slip: 0.1, guess: 0.02, forget: 0.05 }, [true, false]),
  nextReturn: { parameters: ["answers"], legal: [[answer(0), answer(2)]] },
  kr20: { parameters: ["matrix"], legal: [[[1, 1, 0], [1, 0, 0], [0, 0, 0]]] },
  itemRest: { parameters: ["matrix"], legal: [[[1, 1, 0], [1, 0, 0], [0, 0, 0]]] },
};

/** Where a negative number is meant: points of the plane have any sign. */
const ANY_SIGN: readonly string[] = ["clearanceMm xMm", "clearanceMm yMm"];
const COUNTS: readonly string[] = ["tp", "fp", "fn", "tn", "events", "total", "day", "table"];

interface Leaf {
  readonly name: Name;
  readonly parameter: string;
  readonly replaced: (value: unknown) => unknown[];
}

type Path = readonly (string | number)[];

const numbersIn = (value: unknown, path: Path): Path[] => {
  if (typeof value === "number") return [path];
  if (value === null || typeof value !== "object") return [];
  const keyOf = (key: string) => (Array.isArray(value) ? Number(key) : key);
  return Object.entries(value).flatMap(([key, part]) => numbersIn(part, [...path, keyOf(key)]));
};

const withValue = (whole: unknown, path: Path, value: unknown): unknown => {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const copy: Record<string, unknown> = structuredClone(whole) as Record<string, unknown>;
  copy[key] = withValue(copy[key], rest, value);
  return copy;
};

/** The name that a message must carry: the last key, with the places in lists behind it. */
const namedIn = ([first = 0, ...path]: Path, parameters: readonly string[]): string => {
  const named: Path = [parameters[Number(first)] ?? "", ...path];
  const last = named.findLastIndex((key) => typeof key === "string");
  return `${named[last]}${named.slice(last + 1).map((place) => `[${place}]`).join("")}`;
};

const leavesOf = (name: Name): Leaf[] =>
  numbersIn(CALLS[name].legal, []).map((path) => ({
    name,
    parameter: namedIn(path, CALLS[name].parameters),
    replaced: (value) => withValue(CALLS[name].legal, path, value) as unknown[],
  }));

const functions = new Map<string, unknown>(Object.entries(engine));
const run = (name: Name, call: readonly unknown[]): unknown =>
  (functions.get(name) as (...values: unknown[]) => unknown)(...call);

const thrownBy = (name: Name, call: readonly unknown[]): unknown => {
  try {
    return run(name, call);
  } catch (error) {
    return error;
  }
};

const names = Object.keys(CALLS) as Name[];
const leaves = names.flatMap(leavesOf);

const expectRefusal = ({ name, parameter, replaced }: Leaf, value: unknown): void => {
  const error = thrownBy(name, replaced(value));
  expect(error, `${name} ${parameter} ${String(value)}`).toBeInstanceOf(RangeError);
  const { message } = error as RangeError;
  expect(message).toContain(parameter);
  expect(message).toMatch(/ must (?:be|have|hold) .+, got .+[^.]$|got .$/);
  expect(message).toContain(`got ${String(value)}`);
};

describe("the public face refuses what lies outside its ranges", () => {
  it("covers every function of the face", () => {
    expect([...names].sort()).toEqual(Object.keys(engine).sort());
    for (const name of names) expect(() => run(name, CALLS[name].legal)).not.toThrow();
  });

  it.each(leaves)("$name refuses no number at all for $parameter", (leaf) => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, "5", undefined]) {
      if (leaf.parameter === "forget" && value === undefined) continue;
      expectRefusal(leaf, value);
    }
  });

  it.each(leaves.filter(({ name, parameter }) => !ANY_SIGN.includes(`${name} ${parameter}`)))(
    "$name refuses -1 for $parameter",
    (leaf) => expectRefusal(leaf, -1),
  );

  it.each(leaves.filter(({ parameter }) => COUNTS.includes(parameter.replace(/\[.*/, ""))))(
    "$name refuses part of one for the count $parameter",
    (leaf) => expectRefusal(leaf, 1.5),
  );

  it("takes points of any sign", () => {
    const [needle] = CALLS.clearanceMm.legal as [Parameters<typeof engine.clearanceMm>[0]];
    expect(engine.clearanceMm({ ...needle, entry: { xMm: -1, yMm: -1 } })).toBeGreaterThan(0);
  });
});

const REFUSALS: readonly (readonly [string, () => unknown])[] = [
  ["anteriorWidthMm must be less than junctionWidthMm (14), got 14",
    () => engine.zoneDepthMm({ junctionWidthMm: 14, anteriorWidthMm: 14, separationMm: 8 })],
  ["widthMm must be at least the difference of nearEdgeMm and farEdgeMm (4) and at most their sum (100), got 3.9",
    () => engine.zoneAngleDeg({ nearEdgeMm: 48, farEdgeMm: 52, widthMm: 3.9 })],
  ["rangeMm must be greater than radiusMm + marginMm (0.3), got 0.3",
    () => engine.standOffDeg({ rangeMm: 0.3, radiusMm: 0.1, marginMm: 0.2 })],
  ["greatestMm must be at least leastMm (12), got 11",
    () => engine.stopSettingMm({ leastMm: 12, greatestMm: 11 }, [12])],
  ["tearMm must be at most 1000000000, got 10000000000",
    () => engine.stitchCount({ tearMm: 10_000_000_000, endMarginMm: 0, greatestSpacingMm: 5 })],
  ["fieldDeg must be less than 180, got 180", () => engine.fieldWidthMm({ distanceMm: 10, fieldDeg: 180 })],
  ["refractiveIndex must be at least 1, got 0.9",
    () => engine.fieldInLiquidDeg({ fieldInAirDeg: 90, refractiveIndex: 0.9 })],
  ["viewDeg must be at most 135, got 140", () => engine.sweptConeDeg({ viewDeg: 140, fieldDeg: 90 })],
  ["scopeMm must be less than boreMm (2.7), got 2.7",
    () => engine.annularFlow({ scopeMm: 2.7, boreMm: 2.7, lengthMm: 100, dropMmHg: 60, viscosityMPaS: 1, densityKgPerM3: 1000, eccentricity: 0 })],
  ["eccentricity must be at most 1, got 1.1",
    () => engine.annularFlow({ scopeMm: 2.3, boreMm: 2.7, lengthMm: 100, dropMmHg: 60, viscosityMPaS: 1, densityKgPerM3: 1000, eccentricity: 1.1 })],
  ["percent must be at most 100, got 101", () => engine.mostVolumeMl({ weightKg: 20, limitMgPerKg: 2, percent: 101 })],
  ['text must be one or more digits, got ""', () => engine.gs1CheckDigit("")],
  ['text must be one or more digits, got "7300-1"', () => engine.gs1CheckDigit("7300-1")],
  ["sdMm must be greater than 0, got 0", () => engine.shareNearer({ distanceMm: 4, meanMm: 5, sdMm: 0 })],
  ["baseRate must be greater than 0 and less than 1, got 1",
    () => engine.predictiveValues({ sensitivity: 0.9, specificity: 0.9, baseRate: 1 })],
  ["specificity must be greater than 0 and less than 1, got 1",
    () => engine.baseRateBehind({ sensitivity: 0.9, specificity: 1, ppv: 0.5 })],
  ["total must be at least 1, got 0", () => engine.wilson({ events: 0, total: 0 })],
  ["events must be at least 0 and at most 10, got 11", () => engine.wilson({ events: 11, total: 10 })],
  ["table must have as many columns as rows (2), got 3 in row 1", () => engine.cohenKappa([[1, 2], [1, 2, 3]])],
  ["table must hold readings in more than one class, got 7 in one", () => engine.cohenKappa([[7, 0], [0, 0]])],
  ["slip + guess must be less than 1, got 1",
    () => engine.knowledgeAfter({ known: 0.5, learn: 0, slip: 0.5, guess: 0.5 }, [])],
  ["answers must hold at least one answer, got 0", () => engine.nextReturn([])],
  ["matrix[0][1] must be 0 or 1, got 0.5", () => engine.kr20([[1, 0.5]])],
  ["matrix must have 2 items in every row, got 1 in row 1", () => engine.kr20([[1, 0], [1]])],
  ["matrix must have 2 items in every row, got 3 in row 1", () => engine.itemRest([[1, 0], [1, 0, 1]])],
];

describe("a refusal says parameter, rule and value", () => {
  it.each(REFUSALS)("%s", (message, call) => {
    expect(call).toThrow(new RangeError(message));
  });

  it("refuses answers that are neither true nor false", () => {
    const half = "yes" as unknown as boolean;
    expect(() => engine.knowledgeAfter({ known: 0.5, learn: 0, slip: 0, guess: 0 }, [half])).toThrow(/answers\[0\]/);
    expect(() => engine.nextReturn([{ day: 0, right: true, unsafe: half }])).toThrow(/answers\[0\]\.unsafe/);
  });
});
