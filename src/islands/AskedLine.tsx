import { useEffect, useRef } from "react";
import type { LineItem } from "../engine/question/item.ts";
import type { Response } from "../engine/question/response.ts";
import { axialOfItem } from "../figures/axial-of-item.ts";
import type { AxialSetting } from "../figures/axial-setting.ts";
import type { AskedPart } from "./asked-part.ts";
import { Drawing } from "./Drawing.tsx";
import { NumberTwin } from "./NumberTwin.tsx";
import { limited, useNeedle } from "./use-needle.ts";

const lineOf = ({ bearingDeg, depthMm }: Pick<AxialSetting, "bearingDeg" | "depthMm">): Response => ({ kind: "line", angleDeg: String(bearingDeg), depthMm: String(depthMm) });

/** The needle as it lay before a reload; as it is first shown where nothing was kept. */
const begunWith = (first: AxialSetting, draft: Response | null | undefined): AxialSetting =>
  draft?.kind === "line" ? { ...first, bearingDeg: limited("bearingDeg", Number(draft.angleDeg) || 0), depthMm: limited("depthMm", Number(draft.depthMm) || 0) } : first;

const NeedleBox = ({ first, words, onDraft, onAnswer }: Pick<AskedPart<LineItem>, "words" | "onDraft" | "onAnswer"> & { readonly first: AxialSetting }) => {
  const { setting, figure, spoken, change, onKeyDown, onPointer } = useNeedle(first, false);
  const begun = useRef(setting);
  useEffect(() => {
    if (setting !== begun.current) onDraft?.(lineOf(setting));
  }, [setting, onDraft]);
  return (
    <div className="instrument">
      <div className="stage" role="application" aria-label={words.needle.stage} tabIndex={0} onKeyDown={onKeyDown} onPointerDown={onPointer} onPointerMove={onPointer} onPointerUp={onPointer} onPointerCancel={onPointer}>
        <Drawing markup={figure.markup} text={figure.text} />
      </div>
      <div className="controls">
        <p className="hint needs-script">{words.needle.byKeyboard}</p>
        <NumberTwin words={words} of="bearingDeg" label={words.needle.angle} unit="°" value={setting.bearingDeg} onChange={(bearingDeg) => change({ bearingDeg })} />
        <NumberTwin words={words} of="depthMm" label={words.needle.depth} unit="mm" value={setting.depthMm} onChange={(depthMm) => change({ depthMm })} />
        <div className="btns needs-script"><button type="button" className="main" onClick={() => onAnswer(lineOf(setting))}>{words.needle.checkLine}</button></div>
        <p className="vh" role="status">{spoken}</p>
      </div>
    </div>
  );
};

/** A needle to be placed in the figure: by hand, by arrow keys, or by its two numbers. */
export const AskedLine = ({ item, words, draft, onDraft, onAnswer }: AskedPart<LineItem>) => {
  const first = axialOfItem(item);
  return first === null ? null : <NeedleBox first={begunWith(first, draft)} words={words} onDraft={onDraft} onAnswer={onAnswer} />;
};
