/** A section of a module, with the questions that it asks. */
export interface AskedSection {
  readonly slug: string;
  readonly text: string;
  readonly families: readonly string[];
}

interface Heading {
  readonly depth: number;
  readonly slug: string;
  readonly text: string;
}

const MARK = /^## .+$|<Ask [^>]*family="([\w-]+)"/gm;

/** Sections of a module's text in their order, each with the questions asked below its heading; a section that asks none is left out. */
export const sectionsAsked = (body: string, headings: readonly Heading[]): readonly AskedSection[] => {
  const own = headings.filter(({ depth }) => depth === 2);
  const asked = own.map(() => [] as string[]);
  let at = -1;
  for (const [, family] of body.matchAll(MARK)) {
    if (family === undefined) at += 1;
    else asked[at]?.push(family);
  }
  return own.flatMap(({ slug, text }, index) => ((asked[index] ?? []).length === 0 ? [] : [{ slug, text, families: asked[index] ?? [] }]));
};
