import { type PointerEvent, useId, useState } from "react";
import type { MarkItem } from "../engine/question/item.ts";
import { type MarksFigure, marksOfItem, pointUnderPicture } from "../figures/axial-marks.ts";
import { type AskedPart, describedBy, isInvalid } from "./asked-part.ts";
import { Drawing } from "./Drawing.tsx";

/** The numbered place nearest to a point of the picture. */
const nearest = (item: MarkItem, figure: MarksFigure | null, event: PointerEvent<HTMLElement>): string | null => {
  const svg = [...event.currentTarget.querySelectorAll("svg")].find((one) => one.getBoundingClientRect().width > 0);
  if (!svg) return null;
  const box = svg.getBoundingClientRect();
  const [xShare, yShare] = [(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.width];
  const point = figure ? figure.pointUnder(svg.classList.contains("narrow") ? "narrow" : "wide", xShare, yShare) : pointUnderPicture(item, xShare, yShare);
  if (!point) return null;
  const far = ({ xMm, yMm }: { readonly xMm: string; readonly yMm: string }): number => Math.hypot(Number(xMm) - point.xMm, Number(yMm) - point.yMm);
  return [...item.regions].sort((first, second) => far(first) - far(second))[0]?.id ?? null;
};

/** Places to be pointed at in a figure, or chosen by their numbers. */
export const AskedMark = ({ item, words, picture, onAnswer, ...rest }: AskedPart<MarkItem>) => {
  const id = useId();
  const [picks, setPicks] = useState<Readonly<Record<string, string>>>({});
  const [active, setActive] = useState(item.targets[0]?.id ?? "");
  const figure = marksOfItem(item, Object.values(picks));
  const pick = (target: string, region: string): void => {
    const next = { ...picks, [target]: region };
    setPicks(next);
    setActive(item.targets.find((one) => next[one.id] === undefined)?.id ?? target);
  };
  const onPointerDown = (event: PointerEvent<HTMLElement>): void => {
    const region = nearest(item, figure, event);
    if (region !== null) pick(active, region);
  };
  const check = (): void => {
    const points = item.targets.flatMap((target) => {
      const region = item.regions.find((one) => one.id === picks[target.id]);
      return region ? [[target.id, { xMm: region.xMm, yMm: region.yMm }] as const] : [];
    });
    onAnswer({ kind: "mark", points: Object.fromEntries(points) });
  };
  return (
    <div className="instrument">
      <div className={figure ? "stage" : "stage tall"} onPointerDown={onPointerDown}>{figure ? <Drawing markup={figure.markup} text={figure.text} /> : picture}</div>
      <div>
        {item.targets.map((target) => (
          <fieldset className="choices" key={target.id} aria-describedby={describedBy(rest)} aria-invalid={isInvalid(rest.problems, target.id)} data-active={target.id === active || undefined}>
            <legend>{target.text}</legend>
            <div className="numbers">
              {item.regions.map((region) => (
                <label key={region.id}><input type="radio" name={`${id}-${target.id}`} value={region.id} checked={picks[target.id] === region.id} onChange={() => pick(target.id, region.id)} onFocus={() => setActive(target.id)} /><span>{region.id}</span></label>
              ))}
            </div>
          </fieldset>
        ))}
        <div className="btns needs-script"><button type="button" className="main" onClick={check}>{words.card.check}</button></div>
      </div>
    </div>
  );
};
