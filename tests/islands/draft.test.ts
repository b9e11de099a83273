import { beforeEach, describe, expect, it, vi } from "vitest";

/** The storage of a tab as a browser has it: its keys are its own properties. */
const tabStorage = () =>
  Object.create({
    getItem(key: string) { return Object.hasOwn(this, key) ? (this as Record<string, string>)[key] : null; },
    setItem(key: string, text: string) { (this as unknown as Record<string, string>)[key] = text; },
    removeItem(key: string) { Reflect.deleteProperty(this, key); },
  }) as Storage;

const ITEM = { family: "how-many", version: 1, seed: "ab12" };
const TYPED = { kind: "sum", texts: { stitches: "4" } } as const;

const openStore = async (isShared: boolean) => {
  vi.resetModules();
  vi.doMock("../../src/facts/site.ts", () => ({ SITE: { isShared } }));
  return { ...(await import("../../src/islands/store/draft.ts")), ...(await import("../../src/islands/store/place.ts")) };
};

describe("what is typed and not checked", () => {
  const tab = { sessionStorage: tabStorage() };
  beforeEach(() => {
    tab.sessionStorage = tabStorage();
    vi.stubGlobal("window", tab);
  });

  it("comes back after a reload, for its own question, until it is forgotten", async () => {
    const first = await openStore(false);
    const place = first.draftPlace(ITEM);
    first.rememberDraft(place, ITEM, TYPED);
    const again = await openStore(false);
    expect(again.recallDraft(place)).toEqual({ ...ITEM, response: TYPED });
    for (const other of [{ ...ITEM, family: "window" }, { ...ITEM, version: 2 }, { ...ITEM, seed: "ab13" }]) expect(again.recallDraft(again.draftPlace(other))).toBeNull();
    again.forgetDraft(place);
    expect(again.recallDraft(place)).toBeNull();
  });

  it("goes all at once when somebody else goes on, and leaves answers and codes in place", async () => {
    const { rememberDraft, recallDraft, remember, recall, rememberText, recallText, forgetDrafts } = await openStore(false);
    for (const place of ["one", "two"]) rememberDraft(place, ITEM, TYPED);
    remember("one", ITEM, TYPED);
    rememberText("list:1", "avocet-12");
    forgetDrafts();
    expect([recallDraft("one"), recallDraft("two"), recall("one")?.seed, recallText("list:1")]).toEqual([null, null, "ab12", "avocet-12"]);
  });

  it("is never kept on a computer that many people use, nor shown there", async () => {
    const shared = await openStore(true);
    shared.rememberDraft("one", ITEM, TYPED);
    expect(Object.keys(tab.sessionStorage)).toEqual([]);
    (await openStore(false)).rememberDraft("one", ITEM, TYPED);
    expect((await openStore(true)).recallDraft("one")).toBeNull();
  });

  it("is only lost where the tab keeps nothing or what it keeps is damaged", async () => {
    const { rememberDraft, recallDraft, forgetDrafts } = await openStore(false);
    for (const text of ["{", '{"family":"how-many"}', JSON.stringify({ ...ITEM, response: { kind: "none" } }), "9".repeat(5000)]) {
      tab.sessionStorage.setItem("small-knee-workbook:draft:one", text);
      expect([text.slice(0, 40), recallDraft("one")]).toEqual([text.slice(0, 40), null]);
    }
    vi.stubGlobal("window", { get sessionStorage() { throw new DOMException("refused", "SecurityError"); } });
    rememberDraft("one", ITEM, TYPED);
    forgetDrafts();
    expect(recallDraft("one")).toBeNull();
  });
});
