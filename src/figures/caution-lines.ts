import { cautionText } from "../facts/cautions.ts";
import { element, escaped } from "./markup.ts";

const LINE_PX = 20;
const BREAK = ", ";

export interface CautionPlace {
  readonly yPx: number;
  readonly fontPx: number;
  /** Two lines where the figure is narrow. */
  readonly isNarrow: boolean;
}

/** C8 inside a figure, so that the picture keeps it when it is copied away from its page. */
export const cautionLines = ({ yPx, fontPx, isNarrow }: CautionPlace): string => {
  const text = cautionText("C8");
  const cut = isNarrow ? text.indexOf(BREAK) + 1 : text.length;
  const line = (y: number, inside: string): string => element("text", { x: 0, y, "font-size": fontPx, class: "c8" }, inside);
  const second = text.slice(cut).trim();
  return line(yPx, `${element("tspan", { class: "id" }, "C8")} ${escaped(text.slice(0, cut))}`) + (second === "" ? "" : line(yPx + LINE_PX, escaped(second)));
};
