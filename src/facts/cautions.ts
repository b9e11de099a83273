import cautions from "../../content/cautions.json" with { type: "json" };

export interface CautionData {
  readonly id: string;
  readonly text: string;
  readonly unreviewed?: string;
  readonly places: readonly string[];
}

const ALL: readonly CautionData[] = cautions;

/** A caution by its id; throws a RangeError for one that the list does not hold. */
export const cautionNamed = (id: string): CautionData => {
  const caution = ALL.find((one) => one.id === id);
  if (!caution) throw new RangeError(`id must be one of ${ALL.map((one) => one.id).join(", ")}, got ${id}`);
  return caution;
};

/** The text of a caution. */
export const cautionText = (id: string): string => cautionNamed(id).text;
