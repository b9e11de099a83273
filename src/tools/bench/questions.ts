import { answerTo, draw, families, grade, slipsOf } from "../../bank/index.ts";
import { clearanceMm } from "../../engine/index.ts";
import { clearAngles } from "../../engine/knee/clear-angles.ts";
import { axialFigure } from "../../figures/axial-figure.ts";
import { axialModelOf, type AxialSetting, NEEDLE_RADIUS_MM } from "../../figures/axial-setting.ts";
import { lineFigure } from "../../figures/line-figure.ts";
import { lineOfItem } from "../../figures/line-of-item.ts";
import { perSecond, shown } from "./rate.ts";

/** Draws, grades and slips of every family by itself. */
export const benchFamilies = (): void => {
  for (const { id, code } of families) {
    shown(`draw ${code} ${id}`, perSecond((seed) => draw(id, seed)));
    const items = Array.from({ length: 200 }, (_, seed) => ({ item: draw(id, seed), right: answerTo(draw(id, seed)) }));
    shown(`grade ${code} ${id}`, perSecond((turn) => {
      const one = items[turn % items.length];
      return one && grade(one.item, one.right);
    }));
    shown(`slips ${code} ${id}`, perSecond((turn) => slipsOf((items[turn % items.length] ?? items[0])?.item ?? draw(id, 0))));
  }
};

/** What a page draws and what the model is asked. */
export const benchFigures = (): void => {
  shown("clearance of a needle to a disc", perSecond((turn) => clearanceMm({ entry: { xMm: 0, yMm: 0 }, tip: { xMm: 40, yMm: turn % 17 }, centre: { xMm: 30, yMm: 9 }, radiusMm: 2, needleRadiusMm: 0.5 })));
  const line = lineOfItem(draw("greatest-depth", 1), true, [9.5]);
  if (line) shown("line figure, both widths, with its words", perSecond(() => lineFigure(line)));
  const needle: AxialSetting = { band: "8-10", side: "right", portal: "AL", bearingDeg: -6, entryToJunctionMm: 4, depthMm: 9, marginMm: 3, capsuleMm: 4 };
  shown("needle figure, both widths, with its words", perSecond((turn) => axialFigure(axialModelOf({ ...needle, bearingDeg: (turn % 60) - 15 }, { isOwn: true, showsAngles: true }))));
  shown("needle figure of a question, without angles", perSecond((turn) => axialFigure(axialModelOf({ ...needle, bearingDeg: (turn % 60) - 15 }, { isOwn: true, showsAngles: false }))));
  const { knee } = axialModelOf(needle, { isOwn: false, showsAngles: false });
  shown("angles that stay clear", perSecond((turn) => clearAngles({ ...needle, knee, needleRadiusMm: NEEDLE_RADIUS_MM, marginMm: (turn % 9) / 2 })));
};
