import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { build as buildSite } from "astro";
import * as pagefind from "pagefind";
import { address } from "../build/address.ts";
import { writeOffline } from "./offline/write.ts";
import { policyOf } from "./policy.ts";
import { runNode } from "./run-node.ts";
import { searchText } from "./search-text.ts";
import { siteMap } from "./site-map.ts";
import { fail, wordsOf } from "./words.ts";

const project = resolve(import.meta.dirname, "../..");
const dist = join(project, "dist");

/** Files of the search package that our own search page never loads. */
const UNUSED = /^(pagefind-ui|pagefind-modular-ui|pagefind-component-ui|pagefind-highlight)/;

interface BuiltPage {
  readonly name: string;
  readonly html: string;
}

const index = async (pages: readonly BuiltPage[]): Promise<number> => {
  const { index: made, errors } = await pagefind.createIndex({});
  if (!made) throw new Error(`The search index could not be made: ${errors.join("; ")}`);
  for (const { name, html } of pages) {
    const added = await made.addHTMLFile({ sourcePath: name.replaceAll("\\", "/"), content: searchText(html) });
    if (added.errors.length > 0) throw new Error(`${name} could not be read for search: ${added.errors.join("; ")}`);
  }
  await made.writeFiles({ outputPath: join(dist, "pagefind") });
  await pagefind.close();
  for (const name of readdirSync(join(dist, "pagefind")).filter((one) => UNUSED.test(one))) rmSync(join(dist, "pagefind", name));
  return pages.length;
};

/** What stopped the builder, in one line: its own log stands above and says where. */
const notBuilt = (error: unknown): never => {
  const says = (error instanceof Error ? error.message : String(error)).split("\n").filter((line) => line.trim() !== "").slice(0, 4).join("\n  ");
  return fail(`The site was not built, and dist is not whole:\n  ${says}\nMend that and build again; npm run check finds most of what an author can write wrongly.`);
};

const main = async (): Promise<void> => {
  wordsOf({ name: "build", does: "Checks the content and builds the site in dist, with its search index and policy.txt." });
  if (!(await runNode(["src/tools/check.ts"]))) process.exit(1);
  process.env["ASTRO_TELEMETRY_DISABLED"] = "1";
  rmSync(dist, { recursive: true, force: true });
  await buildSite({ root: project, logLevel: "warn" }).catch(notBuilt);
  const pages = readdirSync(dist, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".html"));
  const read = pages.sort().map((name) => ({ name, html: readFileSync(join(dist, name), "utf8") }));
  writeFileSync(join(dist, "policy.txt"), `${policyOf(read.map(({ html }) => html))}\n`);
  const map = siteMap(address, read);
  if (map !== null) writeFileSync(join(dist, "sitemap.xml"), map);
  const found = await index(read);
  if (!existsSync(join(dist, "pagefind", "pagefind.js"))) throw new Error("The search index has no program file.");
  writeOffline(dist);
  console.log(`Built ${pages.length} pages in dist; search reads ${found} of them.`);
};

await main();
