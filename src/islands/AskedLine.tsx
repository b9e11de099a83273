import type { LineItem } from "../engine/question/item.ts";
import { axialOfItem } from "../figures/axial-of-item.ts";
import type { AxialSetting } from "../figures/axial-setting.ts";
import type { AskedPart } from "./asked-part.ts";
import { Drawing } from "./Drawing.tsx";
import { NumberTwin } from "./NumberTwin.tsx";
import { useNeedle } from "./use-needle.ts";

const NeedleBox = ({ first, words, onAnswer }: Pick<AskedPart<LineItem>, "words" | "onAnswer"> & { readonly first: AxialSetting }) => {
  const { setting, figure, spoken, change, onKeyDown, onPointer } = useNeedle(first, false);
  const check = (): void => onAnswer({ kind: "line", angleDeg: String(setting.bearingDeg), depthMm: String(setting.depthMm) });
  return (
    <div className="instrument">
      <div className="stage" role="application" aria-label={words.needle.stage} tabIndex={0} onKeyDown={onKeyDown} onPointerDown={onPointer} onPointerMove={onPointer} onPointerUp={onPointer} onPointerCancel={onPointer}>
        <Drawing markup={figure.markup} text={figure.text} />
      </div>
      <div className="controls">
        <p className="hint needs-script">{words.needle.byKeyboard}</p>
        <NumberTwin words={words} of="bearingDeg" label={words.needle.angle} unit="°" value={setting.bearingDeg} onChange={(bearingDeg) => change({ bearingDeg })} />
        <NumberTwin words={words} of="depthMm" label={words.needle.depth} unit="mm" value={setting.depthMm} onChange={(depthMm) => change({ depthMm })} />
        <div className="btns needs-script"><button type="button" className="main" onClick={check}>{words.needle.checkLine}</button></div>
        <p className="vh" role="status">{spoken}</p>
      </div>
    </div>
  );
};

/** A needle to be placed in the figure: by hand, by arrow keys, or by its two numbers. */
export const AskedLine = ({ item, words, onAnswer }: AskedPart<LineItem>) => {
  const first = axialOfItem(item);
  return first === null ? null : <NeedleBox first={first} words={words} onAnswer={onAnswer} />;
};
