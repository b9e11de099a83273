import { relative, resolve } from "node:path";
import { printedBlocks } from "./check/print.ts";
import { unreadableIn } from "./check/unreadable.ts";
import { folderNamed, type Tool, wordsOf } from "./words.ts";

/**
 * Reads an author's files and says what to write. JSON that cannot be read is named first and alone: the rest is
 * loaded after it, since question families read some of these files themselves.
 */

const content = resolve(import.meta.dirname, "../../content");
const shown = (path: string): string => relative(process.cwd(), path).replaceAll("\\", "/") || ".";

const TOOL: Tool = {
  name: "check",
  does: "Reads every module, the number ledger and the questions, and prints each mistake with file, line, what was found and the line to write.",
  words: ["content folder"],
  flags: {
    notes: { says: "lists the notes too" },
    family: { says: "looks at ten thousand draws of one family, and at nothing else", value: "window" },
    hold: { says: "writes down the new revisions of the ledger in content/held-numbers.json" },
  },
  example: "npm run check -- --family=window",
};

const main = async (): Promise<boolean> => {
  const { words, values, has } = wordsOf(TOOL);
  const folder = folderNamed(words[0], content);
  const unreadable = [...new Set([folder, content])].flatMap((one) => unreadableIn(one, shown));
  if (unreadable.length > 0) {
    console.log(`${printedBlocks(unreadable)}\n\nNothing else was checked; run it again when ${unreadable.length === 1 ? "this" : "these"} can be read.`);
    return false;
  }
  const { checkWhole } = await import("./check/whole.ts");
  return checkWhole({ folder, only: values["family"], withNotes: has("notes"), holds: has("hold") });
};

process.exitCode = (await main()) ? 0 : 1;
