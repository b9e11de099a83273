/** One value as the ledger prints it: decimal text, never a double. */
export type ValueText = Readonly<Partial<Record<"mean" | "sd" | "value" | "from" | "to" | "median" | "events" | "total", string>>>;

export interface RevisionData {
  readonly revision: number;
  readonly state: string;
  readonly value: ValueText | null;
  readonly source: string | null;
  readonly readIn: string;
  readonly note?: string;
  readonly formula?: string;
  readonly parents?: readonly string[];
  readonly replacedBy?: number;
}

export interface EntryData {
  readonly key: string;
  readonly name: string;
  readonly definition: string;
  readonly population: {
    readonly who: string;
    readonly ages: { readonly from: number; readonly to: number } | null;
    readonly sex: string;
    readonly n: number | null;
    readonly adult: boolean;
  };
  readonly position: string;
  readonly method: string;
  readonly unit: string;
  /** Name of the rule set, where the value is a rule. */
  readonly set?: string;
  readonly flags?: readonly string[];
  readonly revisions: readonly RevisionData[];
}

/** Values that differ in print: which entries, what differs, and what to make of it. */
export interface ConflictData {
  readonly id: string;
  readonly between: readonly string[];
  readonly differs: string;
  readonly teach: string;
}

export interface TopicData {
  readonly topic: string;
  readonly title: string;
  readonly entries: readonly EntryData[];
  readonly conflicts?: readonly ConflictData[];
}

/** One revision of one entry, with its value both as printed and as numbers. */
export interface Pinned {
  readonly key: string;
  readonly entry: string;
  readonly revision: number;
  readonly name: string;
  readonly unit: string;
  readonly value: ValueText;
  readonly number: Readonly<Partial<Record<keyof ValueText, number>>>;
  readonly source: string | null;
  readonly state: string;
  /** True for a value that was measured in adults. */
  readonly adult: boolean;
}

const numbersOf = (value: ValueText): Pinned["number"] =>
  Object.fromEntries(Object.entries(value).map(([part, text]) => [part, Number(text)]));

const found = new WeakMap<TopicData, Map<string, Pinned>>();

const search = (topic: TopicData, pin: string): Pinned => {
  const [key = "", number = ""] = pin.split("@");
  const entry = topic.entries.find((one) => one.key === key);
  const revision = entry?.revisions.find((one) => String(one.revision) === number);
  if (!entry || !revision) throw new RangeError(`pin must name an entry and revision of ${topic.topic}, got ${pin}`);
  const value = revision.value ?? {};
  const { name, unit } = entry;
  return { key, entry: pin, revision: revision.revision, name, unit, value, number: numbersOf(value), source: revision.source, state: revision.state, adult: entry.population.adult };
};

/** The revision that a pin such as `zone-width.8-10@1` names; throws a RangeError for a pin that the topic does not hold. */
export const pinnedIn = (topic: TopicData, pin: string): Pinned => {
  const held = found.get(topic) ?? new Map<string, Pinned>();
  const before = held.get(pin);
  if (before) return before;
  const known = search(topic, pin);
  found.set(topic, held.set(pin, known));
  return known;
};
