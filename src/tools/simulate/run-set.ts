import { type Chance, chanceFrom } from "../../engine/random/chance.ts";
import { sha256Words } from "../../engine/random/sha256.ts";
import { xoshiro128 } from "../../engine/random/xoshiro.ts";
import type { Assumptions } from "./assumptions.ts";
import { keptBy, type KeptBy } from "./keep.ts";
import { type MeanInterval, meanInterval } from "./mean-interval.ts";
import { ORDERS } from "./orders.ts";
import { traitsOf } from "./person.ts";
import { type Reached, reachSteady } from "./reach-steady.ts";

export interface OrderResult {
  readonly name: string;
  readonly questions: MeanInterval;
  readonly days: MeanInterval;
  readonly rightShare: MeanInterval;
  readonly notReached: number;
  /** Questions of this order less those of the workbook's, learner by learner. */
  readonly moreQuestions: MeanInterval;
  readonly moreRight: MeanInterval;
}

export interface KeepResult {
  readonly name: string;
  readonly rightShare: MeanInterval;
  readonly returns: MeanInterval;
  readonly idleDays: MeanInterval;
  /** Share right in this way less that of the rule, learner by learner. */
  readonly moreRight: MeanInterval;
}

export interface SetResult {
  readonly set: Assumptions;
  readonly learners: number;
  readonly orders: readonly OrderResult[];
  readonly keeps: readonly KeepResult[];
}

export interface RunOptions {
  readonly learners: number;
  readonly seed: number;
}

const WAYS: readonly { readonly name: string; readonly way: keyof KeptBy }[] = [
  { name: "by the rule", way: "rule" }, { name: "equal gaps, as many", way: "equal" }, { name: "no return", way: "none" },
];

/** A stream of its own for each learner and purpose, so that no part of the run can shift the draws of another. */
const streamOf = (...words: readonly (string | number)[]): Chance => chanceFrom(xoshiro128(sha256Words(["simulate", ...words].join("/"))));

const less = (these: readonly number[], those: readonly number[]): MeanInterval => meanInterval(these.map((value, place) => value - (those[place] ?? 0)));

type Counts = Omit<Reached, "lines">;

/** What is kept of a run; thousands of logs would fill the memory. */
const countsOf = ({ questions, days, isReached, rightShare }: Reached): Counts => ({ questions, days, isReached, rightShare });

const orderResult = (name: string, here: readonly Counts[], first: readonly Counts[]): OrderResult => {
  const questions = here.map((one) => one.questions);
  const right = here.map((one) => one.rightShare);
  return {
    name,
    questions: meanInterval(questions),
    days: meanInterval(here.map(({ days }) => days)),
    rightShare: meanInterval(right),
    notReached: here.filter(({ isReached }) => !isReached).length,
    moreQuestions: less(questions, first.map((one) => one.questions)),
    moreRight: less(right, first.map((one) => one.rightShare)),
  };
};

const keepResult = (name: string, way: keyof KeptBy, kept: readonly KeptBy[]): KeepResult => {
  const right = kept.map((one) => one[way].rightShare);
  return {
    name,
    rightShare: meanInterval(right),
    returns: meanInterval(kept.map((one) => one[way].returns)),
    idleDays: meanInterval(kept.map((one) => one[way].idleDays)),
    moreRight: less(right, kept.map(({ rule }) => rule.rightShare)),
  };
};

/** Runs one set of assumptions: the same learners in every order and in every way of coming back. */
export const runSet = (set: Assumptions, { learners, seed }: RunOptions): SetResult => {
  const people = Array.from({ length: learners }, (_, person) => ({ person, traits: traitsOf(set, streamOf(seed, set.name, person, "traits")) }));
  const reached = ORDERS.map((order) => people.map(({ person, traits }): Counts => countsOf(reachSteady(order, traits, streamOf(seed, set.name, person, order.name)))));
  const kept = people.map(({ person, traits }) => keptBy(traits, streamOf(seed, set.name, person, "keep")));
  return {
    set,
    learners,
    orders: ORDERS.map(({ name }, place) => orderResult(name, reached[place] ?? [], reached[0] ?? [])),
    keeps: WAYS.map(({ name, way }) => keepResult(name, way, kept)),
  };
};
