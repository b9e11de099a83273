import type { Course } from "../course.ts";
import type { Finding } from "../finding.ts";
import type { Link, MdxFile } from "../mdx-file.ts";
import { nearest } from "../nearest.ts";
import { type FileRule, quoted } from "../rule.ts";

const slugOf = (text: string): string => text.toLowerCase().replace(/^#+\s*/, "").replace(/[^\p{L}\p{N}\s-]/gu, "").trim().replace(/\s/g, "-");

const anchorsOf = (file: MdxFile): readonly string[] => file.headings.map(({ start, stop }) => slugOf(file.text.slice(start, stop)));

/** Addresses inside the site that can be told from the sources alone, with the names that may stand in them. */
const placesOf = (file: MdxFile, course: Course, address: string): { readonly head: string; readonly tail: string; readonly name: string; readonly names: readonly string[] } | null => {
  const [, head = "", name = "", tail = ""] = /^(#|\/practice\/|\/modules\/)([^/#]+)(\/?)$/.exec(address) ?? [];
  if (head === "#") return { head, tail, name, names: anchorsOf(file) };
  if (head === "/practice/" && course.families.length > 0) return { head, tail, name, names: course.families.map(({ id }) => id) };
  return head === "/modules/" ? { head, tail, name, names: course.files.filter(({ kind }) => kind === "module").map(({ slug }) => slug) } : null;
};

const addressEdit = (file: MdxFile, link: Link, address: string): Finding["edits"] => {
  const at = file.text.indexOf(link.url, file.text.indexOf("](", link.start));
  return at < 0 || at > link.stop ? [] : [{ start: at, end: at + link.url.length, text: address }];
};

const deadLink = (file: MdxFile, link: Link, course: Course): readonly Finding[] => {
  const place = placesOf(file, course, link.url);
  if (place === null || place.names.includes(place.name)) return [];
  const meant = nearest(place.name, place.names);
  const head = { source: file, offset: link.start, rule: "link", found: quoted(link.url) };
  const where = place.head === "#" ? "a heading of this file" : `a page under ${place.head}`;
  return [meant === null
    ? { ...head, expected: `${where}; none is near`, write: link.text === "" ? "words without a link" : link.text }
    : { ...head, expected: `${where}; the nearest is "${meant}"`, edits: addressEdit(file, link, `${place.head}${meant}${place.tail}`) ?? [] }];
};

const wordless = (file: MdxFile, link: Link): readonly Finding[] => {
  const at = file.text.indexOf("](", link.start);
  if (link.text.trim() !== "" || at < 0) return [];
  const isImage = link.kind === "image";
  const expected = isImage ? "words for whoever does not see the picture, between the brackets" : "words that say where the link leads";
  const words = isImage ? "what the picture shows" : "where it leads";
  const start = link.start + (isImage ? 2 : 1);
  return [{ source: file, offset: link.start, rule: isImage ? "image without words" : "link", found: quoted(file.text.slice(link.start, link.stop)), expected, edits: [{ start, end: at, text: words }] }];
};

/** Images have words for whoever does not see them; links have words and lead somewhere. */
export const links: FileRule = (file, course) =>
  file.links.flatMap((link) => [...wordless(file, link), ...(link.kind === "link" ? deadLink(file, link, course) : [])]);
