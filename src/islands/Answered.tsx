import { type Ref, useMemo } from "react";
import type { Item } from "../engine/question/item.ts";
import { cautionText } from "../facts/cautions.ts";
import { filled, type Words } from "../facts/words.ts";
import { axialFigure } from "../figures/axial-figure.ts";
import { marksOfItem } from "../figures/axial-marks.ts";
import { axialOfItem } from "../figures/axial-of-item.ts";
import { axialModelOf } from "../figures/axial-setting.ts";
import { lineFigure } from "../figures/line-figure.ts";
import { placesOn } from "../figures/line-model.ts";
import { lineOfItem } from "../figures/line-of-item.ts";
import { zoneOfItem } from "../figures/zone-figure.ts";
import { Compare, Shortfall } from "./Compare.tsx";
import { Drawing } from "./Drawing.tsx";
import { Glyph } from "./Glyph.tsx";
import type { Graded } from "./grading.ts";
import { Panels } from "./Panels.tsx";
import { Report } from "./Report.tsx";
import { Stem } from "./Stem.tsx";
import { Valued } from "./Valued.tsx";

interface AnsweredProps {
  readonly item: Item;
  readonly graded: Graded;
  readonly words: Words;
  readonly headingRef: Ref<HTMLHeadingElement>;
}

const TONES: Readonly<Record<string, string>> = { right: "act", "unsafe-side": "stop" };

const headingFor = (item: Item, { response, verdict }: Graded, words: Words): string => {
  if (verdict.verdict === "right" && "says" in response && item.kind === "sum") return filled(words.says.right, { said: item.says[response.says].toLowerCase() });
  if (verdict.verdict === "safe-side" && !item.unsafe) return words.verdicts.off;
  return words.verdicts[verdict.verdict];
};

/** The line of the question with the learner's own depths on it; null for a question about something else. */
const useLine = (item: Item, { verdict }: Graded) =>
  useMemo(() => {
    const yours = verdict.parts.flatMap(({ value }) => (value === undefined ? [] : [Number(value)])).filter((depth) => depth > 0);
    const model = lineOfItem(item, true, yours);
    return model ? { figure: lineFigure(model), places: placesOn(model) } : null;
  }, [item, verdict]);

/** The knee of the question with the learner's own needle in it; null for a question about something else. */
const useKnee = (item: Item, { response }: Graded) =>
  useMemo(() => {
    if (response.kind !== "line") return null;
    const setting = axialOfItem(item, { angleDeg: Number(response.angleDeg.replace(",", ".")), depthMm: Number(response.depthMm.replace(",", ".")) });
    return setting ? axialFigure(axialModelOf(setting, { isOwn: true, showsAngles: true })) : null;
  }, [item, response]);

/** The learner's number, where one was read. */
const ownNumber = ({ verdict }: Graded): number | undefined => {
  const value = verdict.parts.find((part) => part.value !== undefined)?.value;
  return value === undefined ? undefined : Number(value);
};

/** The page after an answer: shape and verdict first, then numbers, slip, figure, three panels, the question again. */
export const Answered = ({ item, graded, words, headingRef }: AnsweredProps) => {
  const { verdict, explanation } = graded;
  const line = useLine(item, graded);
  const knee = useKnee(item, graded);
  const marks = useMemo(() => marksOfItem(item), [item]);
  const zone = useMemo(() => zoneOfItem(item, ownNumber(graded)), [item, graded]);
  const inWords = line?.figure.text ?? knee?.text ?? marks?.text ?? zone?.text;
  return (
    <>
      <h3 className={`verdict ${TONES[verdict.verdict] ?? "near"}`} tabIndex={-1} ref={headingRef}><Glyph id={`v-${verdict.verdict}`} />{headingFor(item, graded, words)}</h3>
      <Compare item={item} graded={graded} words={words} />
      {line?.places.isEmpty ? <Shortfall places={line.places} words={words} /> : null}
      {explanation.slipName === undefined ? null : <p className="slipname"><b>{filled(words.card.slip, { name: explanation.slipName })}</b></p>}
      {verdict.verdict === "unsafe-side" ? <p className="caution stop" data-caution="C10"><span className="id">C10</span> {cautionText("C10")}</p> : null}
      {line ? (
        <figure className="figure">
          <Drawing markup={line.figure.markup} text={line.figure.text} />
          <figcaption>{line.figure.own === "" ? null : <><b><Valued text={line.figure.own} /></b> </>}{words.figure.captionAnswered}</figcaption>
        </figure>
      ) : null}
      {knee ? <figure className="figure axial"><Drawing markup={knee.markup} text={knee.text} /><figcaption>{words.figure.captionAnswered}</figcaption></figure> : null}
      {zone ? <figure className="figure"><Drawing markup={zone.markup} text={zone.text} /></figure> : null}
      {marks ? <figure className="figure axial"><Drawing markup={marks.markup} text={marks.text} /></figure> : null}
      <Panels explanation={explanation} verdict={verdict} words={words} />
      {inWords === undefined ? null : <details className="more"><summary>{words.card.figureWords}</summary><p><Valued text={inWords} /></p></details>}
      <details className="more"><summary>{words.card.working}</summary><ul className="working">{explanation.working.map((text) => <li key={text}><Valued text={text} /></li>)}</ul></details>
      <details className="more"><summary>{words.card.stemAgain}</summary><div><Stem item={item} /><p className="question">{item.question}</p></div></details>
      <Report item={item} graded={graded} words={words} />
    </>
  );
};
