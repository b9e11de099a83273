import { useState } from "react";
import { withUnit } from "../engine/quantity/format.ts";
import { cautionText } from "../facts/cautions.ts";
import { agesOf, KNEE_BANDS } from "../facts/knee-model.ts";
import { needleWordsOf } from "../facts/needle-words.ts";
import { filled, wordsOf, type Words } from "../facts/words.ts";
import { angleRule } from "../figures/angle-rule.ts";
import { isClear } from "../figures/axial-model.ts";
import type { AxialSetting } from "../figures/axial-setting.ts";
import { otherAges, SHARE_KNEES, shareClear } from "../figures/axial-share.ts";
import { anglesInWords, AXIAL_WORDS } from "../figures/axial-words.ts";
import { Drawing } from "./Drawing.tsx";
import { Glyph } from "./Glyph.tsx";
import { NumberTwin } from "./NumberTwin.tsx";
import { Segments } from "./Segments.tsx";
import { type NeedleHand, useNeedle } from "./use-needle.ts";
import { Valued } from "./Valued.tsx";

const own = needleWordsOf("en");

const mm = (value: number | null | undefined): string => (value === null || value === undefined ? own.none : withUnit(value.toFixed(1).replace("-", "−"), "mm"));

const glyphFor = (misses: boolean, clear: boolean): string => {
  if (misses) return "v-not-recognised";
  return clear ? "v-right" : "v-unsafe-side";
};

/** Whether the needle keeps the margin, and every distance that answers. */
const ReadOuts = ({ hand }: { readonly hand: NeedleHand }) => {
  const { view } = hand.figure;
  const { needle } = view;
  const clear = isClear(view);
  const status = needle === null ? own.misses : own[clear ? "clear" : "blocked"];
  const glyph = glyphFor(needle === null, clear);
  const rows: readonly (readonly [string, string, string])[] = [
    [own.nearest, needle ? AXIAL_WORDS.en.structures[needle.nearest.id] : own.none, "name"],
    [own.gap, mm(needle?.nearest.clearanceMm), clear ? "big" : "big stop"],
    [own.asked, mm(hand.setting.marginMm), ""],
    [own.toCapsule, mm(needle?.entryToCapsuleMm), ""],
    [own.past, mm(needle?.overshootMm), ""],
    [own.width, mm(needle?.pathWidthMm), ""],
  ];
  return (
    <>
      <h2 className={`verdict ${clear ? "act" : "stop"}`}><Glyph id={glyph} />{status}</h2>
      <dl className="readout">{rows.map(([term, text, tone]) => <div key={term}><dt>{term}</dt><dd className={tone === "name" ? "" : `v ${tone}`}>{text}</dd></div>)}</dl>
    </>
  );
};

const Controls = ({ hand, words }: { readonly hand: NeedleHand; readonly words: Words }) => {
  const { setting, change } = hand;
  const twin = { words };
  return (
    <div className="controls">
      <Segments legend={own.portal} value={setting.portal} options={[["AM", own.AM], ["AL", own.AL]]} onChange={(portal) => change({ portal })} />
      <NumberTwin {...twin} of="bearingDeg" label={words.needle.angle} unit="°" value={setting.bearingDeg} onChange={(bearingDeg) => change({ bearingDeg })} />
      <NumberTwin {...twin} of="depthMm" label={words.needle.depth} unit="mm" value={setting.depthMm} onChange={(depthMm) => change({ depthMm })} />
      <NumberTwin {...twin} of="entryToJunctionMm" label={own.entry} unit="mm" value={setting.entryToJunctionMm} onChange={(entryToJunctionMm) => change({ entryToJunctionMm })} />
      <NumberTwin {...twin} of="marginMm" label={own.margin} unit="mm" value={setting.marginMm} onChange={(marginMm) => change({ marginMm })} />
      <NumberTwin {...twin} of="capsuleMm" label={own.capsule} unit="mm" value={setting.capsuleMm} onChange={(capsuleMm) => change({ capsuleMm })} />
      <Segments legend={own.side} value={setting.side} options={[["right", own.right], ["left", own.left]]} onChange={(side) => change({ side })} />
      <Segments legend={own.ages} value={setting.band} options={KNEE_BANDS.map((band) => [band, band.replace("-", "–")] as const)} onChange={(band) => change({ band })} />
    </div>
  );
};

/** The same line in other children, and in a drawn population. */
const Others = ({ hand }: { readonly hand: NeedleHand }) => {
  const [asked, setAsked] = useState<AxialSetting | null>(null);
  const share = asked === hand.setting ? shareClear(hand.setting) : null;
  return (
    <div className="others">
      <h3>{own.flips}</h3>
      <ul className="ages">
        {otherAges(hand.setting).map(({ band, isClear: clear, misses }) => (
          <li key={band} aria-current={band === hand.setting.band ? "true" : undefined}>
            <Glyph id={glyphFor(misses, clear)} />
            <span>{agesOf(band)}: {misses ? own.misses : own[clear ? "clear" : "blocked"]}</span>
          </li>
        ))}
      </ul>
      <div className="btns needs-script"><button type="button" className="quiet" onClick={() => setAsked(hand.setting)}>{own.share}</button></div>
      <p role="status">{share === null ? "" : filled(own.shareText, { count: String(SHARE_KNEES), ages: agesOf(hand.setting.band), percent: `${Math.round(100 * share)} %` })}</p>
      {share === null ? null : <p className="caution" data-caution="C14"><span className="id">C14</span> {cautionText("C14")}</p>}
    </div>
  );
};

/** The instrument: a needle in the model knee that is moved, and every distance answers. */
export const NeedleFigure = ({ first }: { readonly first: AxialSetting }) => {
  const words = wordsOf("en");
  const hand = useNeedle(first, true);
  const { figure, spoken } = hand;
  return (
    <div className="needlework">
      <div className="instrument">
        <div className="stage" role="application" aria-label={words.needle.stage} tabIndex={0} onKeyDown={hand.onKeyDown} onPointerDown={hand.onPointer} onPointerMove={hand.onPointer} onPointerUp={hand.onPointer} onPointerCancel={hand.onPointer}>
          <Drawing markup={figure.markup} text={figure.text} />
        </div>
        <div>
          <ReadOuts hand={hand} />
          <Controls hand={hand} words={words} />
        </div>
      </div>
      <h2>{own.anglesHead}</h2>
      <Drawing markup={angleRule(figure.view, 840, "wide") + angleRule(figure.view, 356, "narrow")} text={anglesInWords(figure.view)} />
      <p className="measure"><Valued text={anglesInWords(figure.view)} /></p>
      <Others hand={hand} />
      <h2>{own.wordsHead}</h2>
      <p className="measure"><Valued text={figure.text} /></p>
      <p className="vh" role="status">{spoken}</p>
    </div>
  );
};
