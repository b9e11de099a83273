import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** What breaks the accessibility rules on a page as it stands, with the element. */
export const axe = async (page: Page): Promise<readonly string[]> => (await new AxeBuilder({ page }).options({ resultTypes: ["violations"] }).setLegacyMode(true).withTags(RULES).analyze()).violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`);

/** How far a page reaches beyond its window, in pixels. */
export const overflow = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
