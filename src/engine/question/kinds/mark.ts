import { toNumber } from "../../quantity/decimal.ts";
import { parseQuantity } from "../../quantity/parse.ts";
import type { MarkFamily, RegionSpec, RuleCheck } from "../family.ts";
import type { Draw } from "../family-head.ts";
import type { MarkItem } from "../item.ts";
import { type KindRules, type Marked, missingPart, OTHER_KIND, partly, plainDraw } from "../kind-rules.ts";
import type { MarkResponse, PointText } from "../response.ts";
import { perDraw } from "../per-draw.ts";

const PLACES = 2;

const pointOf = ({ xMm, yMm }: RegionSpec): PointText => ({ xMm: xMm.toFixed(PLACES), yMm: yMm.toFixed(PLACES) });

/** Points at the regions chosen for the targets. */
const asResponse = (family: MarkFamily, draw: Draw, chosen: Readonly<Record<string, string>>): MarkResponse => {
  const regions = family.regions(draw);
  const points = Object.entries(chosen).flatMap(([target, id]) => {
    const region = regions.find((one) => one.id === id);
    return region ? [[target, pointOf(region)] as const] : [];
  });
  return { kind: "mark", points: Object.fromEntries(points) };
};

const coordinate = (text: string): number | null => {
  const reading = parseQuantity(text, "mm");
  return "value" in reading ? toNumber(reading.value) : null;
};

/** The region that a point lies in; of several the nearest. */
const regionAt = (regions: readonly RegionSpec[], point: PointText | undefined): string | null => {
  const x = point ? coordinate(point.xMm) : null;
  const y = point ? coordinate(point.yMm) : null;
  if (x === null || y === null) return null;
  const hits = regions
    .map((region) => ({ id: region.id, gap: Math.hypot(x - region.xMm, y - region.yMm) - region.radiusMm }))
    .filter(({ gap }) => gap <= 0)
    .sort((first, second) => first.gap - second.gap);
  return hits[0]?.id ?? "";
};

const truthOf = perDraw((family: MarkFamily, draw: Draw) => family.truth(draw));

const applying = perDraw((family: MarkFamily, draw: Draw) =>
  family.slips.flatMap(({ id, gives }) => {
    const given = gives(draw);
    return given === null ? [] : [{ id, given }];
  }));

/** A placement that is marked by a rule, as many placements keep it. */
const byRule = ({ isRight, score, slip }: RuleCheck): Marked =>
  isRight ? { verdict: "right", score: 1, parts: [] } : { verdict: "safe-side", score, parts: [], ...(slip === undefined ? {} : { slip }) };

/** Marks: each target in its own region; a critical target elsewhere is unsafe. */
export const markRules: KindRules<MarkFamily, MarkItem> = {
  drawOf: plainDraw,
  answer: (family, draw) => asResponse(family, draw, truthOf(family, draw)),
  slips: (family, draw) => applying(family, draw).map(({ id, given }) => ({ id, response: asResponse(family, draw, given) })),
  mark: (family, draw, response) => {
    if (response.kind !== "mark") return OTHER_KIND;
    const targets = family.targets(draw);
    if (!Object.keys(response.points).every((target) => targets.includes(target))) return OTHER_KIND;
    const regions = family.regions(draw);
    const hit: Record<string, string> = {};
    for (const target of targets) {
      const region = regionAt(regions, response.points[target]);
      if (region === null) return missingPart(target);
      hit[target] = region;
    }
    if (family.check) return byRule(family.check(draw, hit));
    const truth = truthOf(family, draw);
    const wrong = targets.filter((target) => hit[target] !== truth[target]);
    const score = 1 - wrong.length / targets.length;
    if (wrong.length === 0) return { verdict: "right", score, parts: [] };
    const slip = applying(family, draw).find(({ given }) => wrong.some((target) => given[target] === hit[target]))?.id;
    return { verdict: partly(family.unsafe && wrong.some((target) => family.critical?.includes(target))), score, parts: [], ...(slip === undefined ? {} : { slip }) };
  },
  shown: (family, draw) => ({
    targets: family.targets(draw).map((id) => ({ id, text: family.words.en.targets[id] ?? id })),
    regions: family.regions(draw).map((region) => ({ id: region.id, ...pointOf(region) })),
  }),
  compare: (family, item, { response, verdict }) => {
    const draw = plainDraw(item);
    const truth = truthOf(family, draw);
    const regions = family.regions(draw);
    return item.targets.map(({ id, text }) => {
      const own = response.kind === "mark" ? (regionAt(regions, response.points[id]) ?? "") : "";
      // Of many right placements the learner's own stands beside itself.
      const answer = family.check && verdict.verdict === "right" ? own : (truth[id] ?? "");
      const yours = response.kind === "mark" ? { yours: own } : {};
      return { ask: id, label: text, ...yours, answer, accepted: answer };
    });
  },
};
