import { answerTo, draw, families, grade, slipsOf } from "../bank/index.ts";
import { sumRates } from "./bench/sums.ts";
import { clearAngles } from "../engine/knee/clear-angles.ts";
import { clearanceMm } from "../engine/index.ts";
import { axialFigure } from "../figures/axial-figure.ts";
import { axialModelOf, type AxialSetting, NEEDLE_RADIUS_MM } from "../figures/axial-setting.ts";
import { lineFigure } from "../figures/line-figure.ts";
import { lineOfItem } from "../figures/line-of-item.ts";
import { benchReturns } from "./bench/returns.ts";
import { benchScope } from "./bench/scope.ts";
import { fail, wordsOf } from "./words.ts";

/** Times the work of a page and of the laws: medians of several rounds, on this machine, with nothing else asked of it. */

const ROUNDS = 5;
const LEAST_MS = 20;

/** Times a second of one piece of work: median of rounds that each last at least a while. */
const perSecond = (work: (turn: number) => unknown): number => {
  const rates: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const start = process.hrtime.bigint();
    let turns = 0;
    let elapsed = 0;
    while (elapsed < LEAST_MS) {
      for (let inner = 0; inner < 50; inner += 1) work(turns + inner);
      turns += 50;
      elapsed = Number(process.hrtime.bigint() - start) / 1e6;
    }
    rates.push((turns / elapsed) * 1000);
  }
  return rates.toSorted((first, second) => first - second)[Math.floor(ROUNDS / 2)] ?? 0;
};

const shown = (name: string, rate: number): void => console.log(`${name.padEnd(44)} ${Math.round(rate).toLocaleString("en-GB").padStart(12)} a second`);

const benchBank = (): void => {
  const sums = sumRates();
  shown("all sums: draw", sums.draw);
  shown("all sums: grade a right answer", sums.right);
  shown("all sums: grade a wrong answer", sums.wrong);
  shown("all sums: draw and grade, right answer", sums.pairRight);
  shown("all sums: draw and grade, wrong answer", sums.pairWrong);
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

const benchFigures = (): void => {
  shown("clearance of a needle to a disc", perSecond((turn) => clearanceMm({ entry: { xMm: 0, yMm: 0 }, tip: { xMm: 40, yMm: turn % 17 }, centre: { xMm: 30, yMm: 9 }, radiusMm: 2, needleRadiusMm: 0.5 })));
  const line = lineOfItem(draw("greatest-depth", 1), true, [9.5]);
  if (line) shown("line figure, both widths, with its words", perSecond(() => lineFigure(line)));
  const needle: AxialSetting = { band: "8-10", side: "right", portal: "AL", bearingDeg: -6, entryToJunctionMm: 4, depthMm: 9, marginMm: 3, capsuleMm: 4 };
  shown("needle figure, both widths, with its words", perSecond((turn) => axialFigure(axialModelOf({ ...needle, bearingDeg: (turn % 60) - 15 }, { isOwn: true, showsAngles: true }))));
  shown("needle figure of a question, without angles", perSecond((turn) => axialFigure(axialModelOf({ ...needle, bearingDeg: (turn % 60) - 15 }, { isOwn: true, showsAngles: false }))));
  const { knee } = axialModelOf(needle, { isOwn: false, showsAngles: false });
  shown("angles that stay clear", perSecond((turn) => clearAngles({ ...needle, knee, needleRadiusMm: NEEDLE_RADIUS_MM, marginMm: (turn % 9) / 2 })));
};

/** A part of its own that a word picks; without one, questions and figures are timed. */
const PARTS: Readonly<Record<string, () => void | Promise<void>>> = { scope: benchScope, returns: benchReturns };

const { words: [part] } = wordsOf({ name: "bench", does: "Times questions and figures. A word picks another part: scope (the view in a browser) or returns (a director's pile of hand-ins).", words: ["scope | returns"] });
if (part !== undefined) await (PARTS[part] ?? (() => fail(`"${part}" is no part of this bench; write scope or returns, or no word for questions and figures.`)))();
else {
  benchBank();
  benchFigures();
}
