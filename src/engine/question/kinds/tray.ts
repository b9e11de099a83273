import type { TrayFamily } from "../family.ts";
import type { Draw } from "../family-head.ts";
import type { TrayItem } from "../item.ts";
import { type KindRules, OTHER_KIND, partly, plainDraw } from "../kind-rules.ts";
import type { TrayResponse } from "../response.ts";
import { perDraw } from "../per-draw.ts";

const drawOf = (item: TrayItem): Draw => ({ ...plainDraw(item), shown: item.things.map(({ id }) => id) });

/** Harmonic mean of how much of the faults was found and how much of what was found is a fault. */
const f1 = (found: readonly string[], faults: readonly string[]): number => {
  if (found.length === 0 && faults.length === 0) return 1;
  const hits = found.filter((id) => faults.includes(id)).length;
  return (2 * hits) / (found.length + faults.length);
};

const faultsOf = perDraw((family: TrayFamily, draw: Draw) => family.faults(draw));

const applying = perDraw((family: TrayFamily, draw: Draw): readonly { readonly id: string; readonly given: readonly string[] }[] =>
  family.slips.flatMap(({ id, gives }) => {
    const given = gives(draw);
    return given === null ? [] : [{ id, given }];
  }));

/** A slip that shows in one thing: a fault that it misses, or a sound thing that it flags, and so did the learner. */
const slipIn = (family: TrayFamily, draw: Draw, found: readonly string[]): string | undefined => {
  const faults = faultsOf(family, draw);
  const isShared = (given: readonly string[]): boolean => {
    const missed = faults.filter((id) => !given.includes(id));
    const extra = given.filter((id) => !faults.includes(id));
    return missed.every((id) => !found.includes(id)) && extra.every((id) => found.includes(id));
  };
  return applying(family, draw).find(({ given }) => isShared(given))?.id;
};

const textsOf = (item: TrayItem, ids: readonly string[]): readonly string[] =>
  ids.length === 0 ? [item.nothing] : ids.map((id) => item.things.find((thing) => thing.id === id)?.text ?? id);
const textOf = (item: TrayItem, ids: readonly string[]): string => textsOf(item, ids).join(" · ");

/** Trays: everything faulty must be found and nothing sound flagged; a critical fault passed is unsafe. */
export const trayRules: KindRules<TrayFamily, TrayItem> = {
  drawOf,
  answer: (family, draw) => ({ kind: "tray", found: [...faultsOf(family, draw)].sort() }),
  slips: (family, draw) => applying(family, draw).map(({ id, given }) => ({ id, response: { kind: "tray", found: [...given].sort() } as TrayResponse })),
  mark: (family, draw, response) => {
    if (response.kind !== "tray" || !response.found.every((id) => draw.shown?.includes(id))) return OTHER_KIND;
    const found = [...new Set(response.found)];
    const score = f1(found, faultsOf(family, draw));
    if (score === 1) return { verdict: "right", score, parts: [] };
    const isUnsafe = family.unsafe && (family.critical?.(draw) ?? []).some((id) => !found.includes(id));
    const slip = slipIn(family, draw, found);
    return { verdict: partly(isUnsafe), score, parts: [], ...(slip === undefined ? {} : { slip }) };
  },
  shown: (family, draw, say) => ({ things: (draw.shown ?? []).map((id) => ({ id, text: family.words.en.thing(say, id) })), nothing: family.words.en.nothing }),
  compare: (family, item, { response }) => {
    const faults = family.faults(drawOf(item));
    const answer = textOf(item, faults);
    const found = response.kind === "tray" ? response.found : null;
    const yours = found === null ? {} : { yours: textOf(item, found) };
    const lines = { ...(found === null ? {} : { yours: textsOf(item, found) }), answer: textsOf(item, faults) };
    return [{ ask: "found", label: "tray", ...yours, answer, accepted: answer, lines }];
  },
};
