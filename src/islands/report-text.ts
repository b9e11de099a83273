import type { Item } from "../engine/question/item.ts";
import type { SiteSettings } from "../facts/site.ts";
import { filled, type Words } from "../facts/words.ts";
import type { Graded } from "./grading.ts";

/** What a report says of the page that it comes from. */
export interface ReportedPage {
  readonly protocol: string;
  readonly origin: string;
  readonly pathname: string;
  readonly title: string;
}

/** The address of a served page; its title where the page lies in a folder, whose path may hold a person's name. */
export const pageName = ({ protocol, origin, pathname, title }: ReportedPage): string =>
  /^https?:$/.test(protocol) ? `${origin}${pathname}` : title;

interface Reported {
  readonly site: SiteSettings;
  readonly page: ReportedPage;
  readonly words: Words;
}

/** Everything that somebody needs to see the same question, the same answer and the same verdict again. */
export const reportText = (item: Item, { response, verdict }: Graded, { site, page, words }: Reported): string =>
  filled(words.report.text, {
    site: site.name,
    edition: site.edition,
    page: pageName(page),
    code: item.code,
    family: item.family,
    version: String(item.version),
    seed: item.seed,
    language: item.language,
    answer: JSON.stringify(response),
    verdict: verdict.verdict,
  });

/** A letter that the reader's own mail program opens; null where the setting is no e-mail address. */
export const mailHref = (reportTo: string, text: string): string | null => {
  if (!/^[^\s@:?&]+@[^\s@:?&]+$/.test(reportTo)) return null;
  const [subject = ""] = text.split("\n");
  return `mailto:${reportTo}?subject=${encodeURIComponent(subject)}&body=${encodeURIComponent(text)}`;
};
