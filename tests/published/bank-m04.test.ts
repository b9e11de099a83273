import { describe, expect, it } from "vitest";
import type { Item } from "../../src/engine/question/item.ts";
import { many, notRight, one, ordersDiffer } from "../support/second-way.ts";

/** Every family of module M04 beside a second way to its answer: the calendar of the platform, lists laid out piece by piece, the rule in words. */

const tray = (id: string, isFaulty: (text: string, item: Item, thing: string) => boolean): readonly string[] =>
  notRight(id, (item) => ({ kind: "tray", found: item.kind === "tray" ? item.things.filter((thing) => isFaulty(thing.text, item, thing.id)).map((thing) => thing.id) : [] }));

describe("the pack on the trolley", () => {
  it("agrees with its list where number and name are the same words", () => {
    expect(tray("pack-check", (text) => {
      const [, listed = "", found = ""] = /^List: (.+)\. On the trolley: (.+)\.$/.exec(text) ?? [];
      return listed.replace(/^1 pair of/, "2") !== found;
    })).toEqual([]);
  });

  it("is in date on the day by the platform's calendar, a month by its last day, a swappable date by neither (ISO 15223-1:2021)", () => {
    const months = ["JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"];
    const lastDay = (text: string): number | null => {
      if (/^\d{2}\/\d{2}\/\d{4}$/.test(text)) return null;
      const named = /^(?:(\d{2}) )?([A-Z]{3}) (\d{4})$/.exec(text);
      const plain = /^(\d{4})-(\d{2})(?:-(\d{2}))?$/.exec(text);
      const slashed = /^(\d{2})\/(\d{4})$/.exec(text);
      const written = plain ? [plain[1], plain[2], plain[3]] : [slashed?.[2], slashed?.[1], undefined];
      const [year, month, day] = named ? [named[3], months.indexOf(named[2] ?? "") + 1, named[1]] : written;
      return day === undefined ? Date.UTC(Number(year), Number(month), 0) : Date.UTC(Number(year), Number(month) - 1, Number(day));
    };
    expect(tray("date-check", (text, item) => {
      const last = lastDay(text.replace(/^Pack [A-G], use by /, ""));
      return last === null || last < Date.parse(item.about["day"] ?? "");
    })).toEqual([]);
  });

  it("adds up piece by piece", () => {
    expect(notRight("opening-sum", (item, of) => {
      const pieces = [...Array(of("singles")).keys()].length + ["left", "right"].flatMap((half) => Array(of("pairs")).fill(half)).length;
      const needles = Array.from({ length: of("packets") }, () => Array(of("perPacket")).fill("needle")).flat().length;
      return many({ instruments: pieces + (item.stem.join(" ").includes("leaves caps and lids out") ? 0 : of("caps")), needles }, 0);
    })).toEqual([]);
  });

  it("is ready when the last of two side by side is done", () => {
    expect(notRight("set-up-minutes", (_, of) => {
      const tasks = [{ left: of("connectingMin") + of("whiteMin") }, { left: of("countMin") }];
      let minute = of("openingMin");
      while (tasks.some(({ left }) => left > 0)) {
        for (const task of tasks) task.left -= 1;
        minute += 1;
      }
      return many({ needMin: minute, spareMin: of("gapMin") - minute }, 0);
    })).toEqual([]);
  });

  it("has spares enough by adding up how many of all packs are good: 1 at 6 and 2 %, 2 at 12 and 3 %, both at 95 %", () => {
    /** P(at least n good of n + s) by building the binomial distribution pack by pack. */
    const needed = (cases: number, fails: number, level: number): number => {
      for (let spares = 0; ; spares += 1) {
        let good = [1];
        for (let pack = 0; pack < cases + spares; pack += 1) good = Array.from({ length: good.length + 1 }, (_, count) => (good[count] ?? 0) * fails + (good[count - 1] ?? 0) * (1 - fails));
        if (good.slice(cases).reduce((sum, share) => sum + share, 0) >= level - 1e-12) return spares;
      }
    };
    expect([needed(6, 0.02, 0.95), needed(12, 0.03, 0.95)]).toEqual([1, 2]);
    expect(notRight("spares", (_, of) => one(needed(of("cases"), of("failPercent") / 100, of("levelPercent") / 100), 0))).toEqual([]);
  });

  it("may be opened where nothing in its description breaks barrier, indicator or label", () => {
    expect(tray("field-fault", (text) => /tear|water mark|open along|pinhole|first colour|another lot/.test(text))).toEqual([]);
  });

  it("sends a picture where the printed rule sends it", () => {
    expect(notRight("picture-route", (item) => {
      const stem = item.stem.join(" ");
      const copies: readonly (readonly [RegExp, string])[] = [[/article|another hospital/, "consent"], [/teaching round inside/, "nameless"], [/./, "not-needed"]];
      const routes: readonly (readonly [RegExp, string])[] = [[/does not answer/, "paper"], [/passing face/, "nowhere"], [/./, "archive"]];
      const first = (rules: typeof copies): string => rules.find(([sign]) => sign.test(stem))?.[1] ?? "";
      return { kind: "name", picks: { route: first(routes), copy: first(copies) } };
    })).toEqual([]);
  });

  it("finds cause and step of a first picture from single words of it (common practice, no source)", () => {
    const signs: readonly (readonly [RegExp, string, string])[] = [[/soft, at every distance/, "focus", "set-focus"], [/milky/, "mist", "wipe"], [/lowest step/, "light", "raise-light"], [/leaks out/, "cable", "reconnect"], [/orange/, "white", "balance"], [/streaming/, "blood", "outflow"], [/upwards/, "horizon", "turn-camera"], [/crescent/, "seating", "reseat"]];
    expect(notRight("first-picture", (item) => {
      const [, cause = "", step = ""] = signs.find(([sign]) => sign.test(item.stem.join(" "))) ?? [];
      return { kind: "name", picks: { cause, step } };
    })).toEqual([]);
  });
});

describe("orders of the trolley and the team", () => {
  it("keep what cannot be undone behind its check (common practice; the pause after the WHO checklist of 2009, from memory)", () => {
    expect(ordersDiffer("set-up", [["list-read", "pack-checked", "pack-opened", "counted", "skin", "count-closed", "binned"], ["field", "pack-opened", "integrity", "connected", "white", "picture", "skin"], ["warmed", "fluid", "skin"], ["pack-opened", "fluid"], ["pack-opened", "kept", "count-closed"], ["pack-opened", "connected"]])).toEqual([]);
    expect(ordersDiffer("team-pause", [["consent", "marked", "read-aloud", "skin", "final-count"], ["name-asked", "read-aloud"], ["allergy", "antibiotic", "skin"], ["name-asked", "antibiotic"], ["allergy", "read-aloud"], ["introduced", "skin"], ["images", "skin"], ["sterility", "skin"], ["skin", "labelled"]])).toEqual([]);
  });
});
