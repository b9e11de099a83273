import { MOST_COUNTED } from "../../../engine/kit/local-list.ts";
import { LOCAL_COUNTED } from "../../../schemas/local.ts";
import { type CourseRule, LEAVE_OUT } from "../rule.ts";

interface CountsFile {
  readonly classes?: readonly { readonly class?: string; readonly comesIn?: number }[];
}

interface PackFile {
  readonly things?: readonly { readonly class?: string }[];
}

/** Classes that come in packets: a card has a line for them beside those of the pack. */
const inPackets = (counts: unknown): readonly (string | undefined)[] => {
  const classes = (counts as CountsFile | undefined)?.classes;
  return Array.isArray(classes) ? (classes as NonNullable<CountsFile["classes"]>).filter(({ comesIn }) => (comesIn ?? 1) > 1).map((one) => one.class) : [];
};

/** A pack whose counted things do not fit on one side of the trolley card: the last ones would hang nowhere. */
export const cardLength: CourseRule = ({ local }) => {
  const packets = inPackets(local.find(({ file }) => file.endsWith("/counts.json"))?.value);
  return local.filter(({ file }) => file.endsWith("/pack.json")).flatMap((source) => {
    const things = (source.value as PackFile | undefined)?.things;
    if (!Array.isArray(things)) return [];
    const classes = (things as NonNullable<PackFile["things"]>).map((thing) => thing.class);
    const counted = classes.filter((one) => one !== "not counted").length + LOCAL_COUNTED.filter((one) => !classes.includes(one) || packets.includes(one)).length;
    if (counted <= MOST_COUNTED.a4) return [];
    return [{
      source,
      offset: source.located().spanOf(["things", things.length - 1]).start,
      rule: "trolley card",
      level: "warning" as const,
      found: `${counted} lines to count`,
      expected: `at most ${MOST_COUNTED.a4}, which is what one side of A4 holds; put small things of a kind into one line`,
      write: LEAVE_OUT,
    }];
  });
};
