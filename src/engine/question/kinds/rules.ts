import type { Family } from "../family.ts";
import type { Item } from "../item.ts";
import type { KindRules } from "../kind-rules.ts";
import type { Kind } from "../response.ts";
import { chainRules } from "./chain.ts";
import { countRules } from "./count.ts";
import { judgeRules } from "./judge.ts";
import { lineRules } from "./line.ts";
import { markRules } from "./mark.ts";
import { nameRules } from "./name.ts";
import { orderRules } from "./order.ts";
import { rangeRules } from "./range.ts";
import { sumRules } from "./sum.ts";
import { trayRules } from "./tray.ts";

const RULES: Readonly<Record<Kind, unknown>> = {
  sum: sumRules,
  order: orderRules,
  judge: judgeRules,
  name: nameRules,
  tray: trayRules,
  count: countRules,
  range: rangeRules,
  mark: markRules,
  line: lineRules,
  chain: chainRules,
};

/** The rules of a family's kind. A family and its items are always of one kind, which the types of this table cannot say. */
export const rulesOf = (family: Family): KindRules<Family, Item> => RULES[family.kind] as KindRules<Family, Item>;
