const META = /<meta http-equiv="content-security-policy" content="([^"]+)"/i;

const decoded = (text: string): string => text.replaceAll("&#39;", "'").replaceAll("&quot;", '"').replaceAll("&amp;", "&");

/** Policies of one page, as a list of names with their values. */
const parts = (html: string): readonly (readonly string[])[] => {
  const policy = META.exec(html)?.[1];
  if (policy === undefined) throw new Error("A page has no content security policy.");
  return decoded(policy).split(";").map((part) => part.trim().split(/\s+/)).filter(([name]) => name !== "");
};

/** One policy that allows what each of the pages allows, for a server to send as a header. */
export const policyOf = (pages: readonly string[]): string => {
  const merged = new Map<string, Set<string>>();
  for (const [name = "", ...values] of pages.flatMap(parts)) {
    const before = merged.get(name) ?? new Set<string>();
    for (const value of values) before.add(value);
    merged.set(name, before);
  }
  return [...merged].map(([name, values]) => [name, ...values].join(" ")).join("; ");
};
