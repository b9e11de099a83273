import { describe, expect, it } from "vitest";
import { pageAt } from "../support/site.ts";

/** What each path takes, as the list of paths says it. */
const minutesOf = (path: string): string => {
  const { html } = pageAt("/paths/");
  const row = html.slice(html.indexOf(`<a href="${path}">`));
  return /(?:\d+ h ?)?(?:\d+ min)?(?=<\/span>)/.exec(row)?.[0] ?? "";
};

describe("the start page", () => {
  it("says of every path that it leads to how long that path takes", () => {
    const doors = pageAt("/").html.replaceAll("\u00a0", " ").split('<ul class="doors">')[1]?.split("</ul>")[0]?.split("<li>").slice(1) ?? [];
    const ways = doors.flatMap((door) => [...door.matchAll(/href="(\/paths\/[\w-]+\/)"/g)].map(([, path = ""]) => ({ path, door })));
    expect(ways.map(({ path }) => path)).toContain("/paths/resident-one-evening/");
    for (const { path, door } of ways) {
      expect([path, minutesOf(path)]).toEqual([path, expect.stringMatching(/\d/)]);
      expect([path, door]).toEqual([path, expect.stringContaining(minutesOf(path))]);
    }
  });
});
