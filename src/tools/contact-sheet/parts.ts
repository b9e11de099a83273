import { element, escaped } from "../../figures/markup.ts";
import type { SheetEntry } from "./entry.ts";

/** Text in an element, escaped. */
export const tag = (name: string, text: string, kind?: string): string => element(name, kind === undefined ? {} : { class: kind }, escaped(text));
/** Each text as a paragraph. */
export const paragraphs = (texts: readonly string[]): string => texts.map((text) => tag("p", text)).join("");
/** A part with its heading; nothing where there is nothing inside. */
export const part = (heading: string, inside: string): string => (inside === "" ? "" : element("section", {}, tag("h3", heading) + inside));
/** Each text as a point of a list. */
export const list = (texts: readonly string[]): string => element("ul", {}, texts.map((text) => tag("li", text)).join(""));

const givenRow = ({ label, text, from }: SheetEntry["givens"][number]): string => element("div", {}, tag("dt", label) + element("dd", {}, tag("span", text, "v") + tag("span", from, "from")));
/** The givens of a question with their units, and whose they are. */
export const givens = (entry: SheetEntry): string => (entry.givens.length === 0 ? "" : element("dl", { class: "givens" }, entry.givens.map(givenRow).join("")));
