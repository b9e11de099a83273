/** One writer of SVG markup: attributes are escaped here and nowhere else, and numbers are printed short. */

type Value = string | number | undefined;
export type Attributes = Readonly<Record<string, Value>>;

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Text made fit to stand in markup. */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (letter) => ESCAPES[letter] ?? letter);

/** A coordinate at a tenth of a pixel, without a trailing zero and never "-0". */
export const px = (value: number): string => {
  const text = value.toFixed(1).replace(/\.0$/, "");
  return text === "-0" ? "0" : text;
};

const printed = (value: Value): string => (typeof value === "number" ? px(value) : escaped(String(value)));

/** An element with its attributes and the markup inside it. */
export const element = (name: string, attributes: Attributes, inside = ""): string => {
  const head = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${printed(value)}"`)
    .join("");
  return inside === "" ? `<${name}${head}/>` : `<${name}${head}>${inside}</${name}>`;
};

/** A line of text in a figure. */
export const label = (x: number, y: number, { text, ...attributes }: { text: string } & Attributes): string =>
  element("text", { x, y, "font-size": 16, ...attributes }, escaped(text));

/** Path data through points, closed on request. */
export const pathThrough = (points: readonly (readonly [number, number])[], closed = false): string =>
  `M${points.map(([x, y]) => `${px(x)} ${px(y)}`).join("L")}${closed ? "Z" : ""}`;
