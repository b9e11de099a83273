import { MODULE_FIGURES } from "../../figures/module-figures.ts";

/** What an attribute holds: `text` is written `a="x"`, `number` `a={3}`, `flag` `a` or `a={true}`, `list` `a={["x"]}`. */
export type AttributeType = "text" | "number" | "flag" | "list";

export interface AttributeSpec {
  readonly type: AttributeType;
  readonly required?: true;
  /** The only texts allowed. */
  readonly oneOf?: readonly string[];
  /** A value that an author may copy. */
  readonly sample: string;
}

export interface TagSpec {
  readonly attributes: Readonly<Record<string, AttributeSpec>>;
  /** True where further attributes of any type are allowed, since the figure itself decides. */
  readonly open?: true;
  /** True where the tag has text inside: `<Term of="…">…</Term>`. */
  readonly holdsText?: true;
}

/** Every tag that a module may use. `src/mdx` has one wrapper for each. */
export const TAGS: Readonly<Record<string, TagSpec>> = {
  Num: {
    attributes: {
      of: { type: "text", required: true, sample: '"zone-width.8-10"' },
      part: { type: "text", oneOf: ["mean", "sd", "both"], sample: '"mean"' },
      age: { type: "number", sample: "{9}" },
    },
  },
  Ours: {
    attributes: {
      value: { type: "text", required: true, sample: '"9"' },
      unit: { type: "text", required: true, sample: '"mm"' },
    },
  },
  Ask: {
    attributes: {
      family: { type: "text", required: true, sample: '"window"' },
      n: { type: "number", sample: "{3}" },
      seed: { type: "number", sample: "{7}" },
      age: { type: "number", sample: "{9}" },
    },
  },
  Caution: { attributes: { id: { type: "text", required: true, sample: '"C4"' } } },
  Figure: { attributes: { of: { type: "text", required: true, oneOf: ["bundle-line", ...MODULE_FIGURES], sample: '"bundle-line"' } }, open: true },
  Term: { attributes: { of: { type: "text", required: true, sample: '"junction"' } }, holdsText: true },
  Pause: { attributes: {}, holdsText: true },
};

/** The shortest right form of a tag, for a message. */
export const sampleOf = (name: string): string => {
  const spec = TAGS[name];
  if (spec === undefined) return `<${name} />`;
  const needed = Object.entries(spec.attributes).filter(([, attribute]) => attribute.required);
  const head = [name, ...needed.map(([key, attribute]) => `${key}=${attribute.sample}`)].join(" ");
  return spec.holdsText ? `<${head}>…</${name}>` : `<${head} />`;
};
