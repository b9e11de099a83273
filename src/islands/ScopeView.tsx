import { useState } from "react";
import { PATTERNS } from "../engine/knee/scope/lesion.ts";
import { STATIONS, type StationId } from "../engine/knee/scope/stations.ts";
import { KNEE_BANDS } from "../facts/knee-model.ts";
import { INSTRUMENTS } from "../figures/scope-instruments.ts";
import { type ScopeSetting, settingAt } from "../figures/scope-setting.ts";
import { SCOPE_WORDS, sharesInWords } from "../figures/scope-words.ts";
import { Drawing } from "./Drawing.tsx";
import { RangeTwin } from "./RangeTwin.tsx";
import { Segments } from "./Segments.tsx";
import { type ScopeHand, useScope } from "./use-scope.ts";
import { Valued } from "./Valued.tsx";

const words = SCOPE_WORDS.en;
const { controls } = words;

interface PickProps<T extends string> {
  readonly label: string;
  readonly options: readonly (readonly [T, string])[];
  readonly value: T;
  readonly onChange: (value: T) => void;
}

/** A choice of many, in one line. */
const Pick = <T extends string>({ label, options, value, onChange }: PickProps<T>) => (
  <label className="pick"><span>{label}</span>
    <select value={value} onChange={(event) => {
      const found = options.find(([id]) => id === event.target.value);
      if (found) onChange(found[0]);
    }}>{options.map(([id, text]) => <option key={id} value={id}>{text}</option>)}</select>
  </label>
);

const named = <T extends string>(ids: readonly T[], names: Readonly<Record<T, string>>): readonly (readonly [T, string])[] => ids.map((id) => [id, names[id]] as const);

const VIEWS = [["0", "0°"], ["30", "30°"], ["70", "70°"]] as const;
const viewOf = (text: "0" | "30" | "70"): 0 | 30 | 70 => (text === "0" ? 0 : { 30: 30 as const, 70: 70 as const }[text]);

/** What is seen from where: leg, portal, scope. */
const Controls = ({ hand }: { readonly hand: ScopeHand }) => {
  const { setting, change } = hand;
  const goTo = (station: StationId): void => {
    const { portal, viewDeg, turnDeg, flexionDeg, of } = settingAt(station, { side: setting.side });
    change({ station, portal, viewDeg, turnDeg, flexionDeg, of, backMm: 0 });
  };
  return (
    <div className="scopecontrols">
      <Pick label={controls.station} options={named(STATIONS, words.stations)} value={setting.station} onChange={goTo} />
      <Segments legend={controls.portal} options={[["AM", words.portals.AM], ["AL", words.portals.AL]]} value={setting.portal} onChange={(portal) => change({ portal })} />
      <Segments legend={controls.view} options={VIEWS} value={String(setting.viewDeg) as "0" | "30" | "70"} onChange={(view) => change({ viewDeg: viewOf(view) })} />
      <RangeTwin label={controls.turn} unit="°" least={0} greatest={345} step={15} value={setting.turnDeg} onChange={(turnDeg) => change({ turnDeg })} />
      <RangeTwin label={controls.back} unit="mm" least={-4} greatest={16} step={1} value={setting.backMm} onChange={(backMm) => change({ backMm })} />
      <RangeTwin label={controls.flexion} unit="°" least={0} greatest={100} step={5} value={setting.flexionDeg} onChange={(flexionDeg) => change({ flexionDeg })} />
      <Segments legend={controls.liquid} options={[["saline", controls.saline], ["air", controls.air]]} value={setting.isInSaline ? "saline" : "air"} onChange={(liquid) => change({ isInSaline: liquid === "saline" })} />
    </div>
  );
};

const mirrored = ({ side, turnDeg }: ScopeSetting, next: ScopeSetting["side"]): Partial<ScopeSetting> => (next === side ? {} : { side: next, turnDeg: (360 - turnDeg) % 360 });

/** What is drawn into the knee: its side and size, a tear, an instrument. */
const Contents = ({ hand }: { readonly hand: ScopeHand }) => {
  const { setting, change } = hand;
  return (
    <div className="scopecontrols">
      <Pick label={controls.pattern} options={named(PATTERNS, words.patterns)} value={setting.pattern} onChange={(pattern) => change({ pattern })} />
      <Segments legend={controls.of} options={[["medial", words.medial], ["lateral", words.lateral]]} value={setting.of} onChange={(of) => change({ of })} />
      <RangeTwin label={controls.amount} unit="%" least={0} greatest={100} step={5} value={Math.round(setting.amount * 100)} onChange={(percent) => change({ amount: percent / 100 })} />
      <Pick label={controls.instrument} options={named(INSTRUMENTS, words.instruments)} value={setting.instrument} onChange={(instrument) => change({ instrument })} />
      <Segments legend={controls.side} options={[["right", controls.right], ["left", controls.left]]} value={setting.side} onChange={(side) => change(mirrored(setting, side))} />
      <Segments legend={controls.ages} options={KNEE_BANDS.map((band) => [band, band.replace("-", "–")] as const)} value={setting.band} onChange={(band) => change({ band })} />
    </div>
  );
};

/** The instrument: a scope in the model knee, first as a drawing with words, then as a computed picture. */
export const ScopeView = ({ station }: { readonly station: StationId }) => {
  const hand = useScope(station);
  const [isDrawing, setIsDrawing] = useState(false);
  const { figure, isPainted, tookMs } = hand;
  const showsPicture = isPainted && !isDrawing;
  return (
    <div className="scopework" data-took-ms={tookMs ?? undefined}>
      <div>
        <div className={showsPicture ? "scopestage painted" : "scopestage"}>
          <Drawing markup={figure.markup} text={figure.text} />
          <div aria-hidden="true"><canvas ref={hand.canvas} width="320" height="320" /></div>
        </div>
        <p className="inview" role="status"><strong>{controls.inView}</strong> <Valued text={`${sharesInWords(figure.list.shares)}. ${figure.target}`} /></p>
        {isPainted ? <Segments legend={controls.shown} options={[["picture", controls.picture], ["drawing", controls.drawing]]} value={showsPicture ? "picture" : "drawing"} onChange={(shown) => setIsDrawing(shown === "drawing")} /> : null}
      </div>
      <div>
        <Controls hand={hand} />
        <Contents hand={hand} />
      </div>
    </div>
  );
};
