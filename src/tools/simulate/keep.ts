import type { Chance } from "../../engine/random/chance.ts";
import type { Attempt } from "../../engine/standing/attempt.ts";
import { type DayAnswer, nextReturn } from "../../engine/standing/next-return.ts";
import { standingOf } from "../../engine/standing/standing.ts";
import { COURSE } from "./course.ts";
import { afterExample, answered, type Memory, rightShare, type Traits } from "./person.ts";

export const TEST_DAY = 60;
const MOST_AT_START = 60;

/** What is left of the course on the last day, in one way of coming back; means of all objectives. */
export interface Kept {
  readonly rightShare: number;
  readonly returns: number;
  /** Days from the last question to the last day. */
  readonly idleDays: number;
}

export interface KeptBy {
  readonly rule: Kept;
  readonly equal: Kept;
  readonly none: Kept;
}

interface Person {
  readonly traits: Traits;
  readonly chance: Chance;
}

/** The first day: asked until the engine calls the objective Worked. An unsafe answer counts as a wrong one here. */
const onFirstDay = (person: Person): Memory => {
  let memory = afterExample(person.traits, 0, person.chance);
  const attempts: Attempt[] = [];
  while (attempts.length < MOST_AT_START && standingOf(attempts, { todayDay: 0, capDays: null }).level !== "worked") {
    const step = answered(memory, 0, person);
    memory = step.memory;
    attempts.push({ id: String(attempts.length), day: 0, kind: step.outcome === "right" ? "right" : "wrong", isFirstTry: true, guess: person.traits.guess });
  }
  return memory;
};

interface Course {
  readonly memory: Memory;
  readonly returns: number;
  readonly lastDay: number;
}

/** Comes back on the day that the rule names, until that day lies behind the last. */
const byRule = (start: Memory, person: Person): Course => {
  let memory = start;
  const answers: DayAnswer[] = [{ day: 0, right: true, unsafe: false }];
  for (let { day } = nextReturn(answers); day < TEST_DAY; { day } = nextReturn(answers)) {
    const step = answered(memory, day, person);
    memory = step.memory;
    answers.push({ day, right: step.outcome === "right", unsafe: false });
  }
  return { memory, returns: answers.length - 1, lastDay: answers.at(-1)?.day ?? 0 };
};

/** Comes back as often, the whole time divided into equal gaps. */
const byEqualGaps = (start: Memory, returns: number, person: Person): Course => {
  const days = Array.from({ length: returns }, (_, place) => Math.round(((place + 1) * TEST_DAY) / (returns + 1)));
  const memory = days.reduce((before, day) => answered(before, day, person).memory, start);
  return { memory, returns, lastDay: days.at(-1) ?? 0 };
};

const keptOf = (courses: readonly Course[], traits: Traits): Kept => {
  const mean = (of: (course: Course) => number): number => courses.reduce((sum, course) => sum + of(course), 0) / courses.length;
  return {
    rightShare: mean(({ memory }) => rightShare(memory, TEST_DAY, traits)),
    returns: mean(({ returns }) => returns),
    idleDays: mean(({ lastDay }) => TEST_DAY - lastDay),
  };
};

/** One learner, every objective worked on one day and then kept in three ways from the same start. */
export const keptBy = (traits: Traits, chance: Chance): KeptBy => {
  const person: Person = { traits, chance };
  const starts = COURSE.map(() => onFirstDay(person));
  const rule = starts.map((start) => byRule(start, person));
  const equal = starts.map((start, place) => byEqualGaps(start, rule[place]?.returns ?? 0, person));
  const none = starts.map((memory): Course => ({ memory, returns: 0, lastDay: 0 }));
  return { rule: keptOf(rule, traits), equal: keptOf(equal, traits), none: keptOf(none, traits) };
};
