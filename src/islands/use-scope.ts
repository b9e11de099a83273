import { type RefObject, useEffect, useMemo, useRef, useState } from "react";
import type { StationId } from "../engine/knee/scope/stations.ts";
import { type ScopeFigure, scopeFigure } from "../figures/scope-figure.ts";
import { type ScopeSetting, scopeModelOf, settingAt } from "../figures/scope-setting.ts";
import { uniformsOf } from "../figures/scope-uniforms.ts";
import type { Painter } from "./scope-painter.ts";

/** While a hand moves the picture is small; at rest it is as large as the disc. */
const MOVING_PX = 144;
const LEAST_PX = 320;
const MOST_PX = 720;
const REST_MS = 260;

export interface ScopeHand {
  readonly setting: ScopeSetting;
  readonly figure: ScopeFigure;
  readonly said: string;
  /** True once a whole picture of the present setting stands in the canvas. */
  readonly isPainted: boolean;
  /** Time of the last picture at rest, in ms; null before the first. */
  readonly tookMs: number | null;
  readonly canvas: RefObject<HTMLCanvasElement | null>;
  readonly change: (part: Partial<ScopeSetting>) => void;
}

/** The painter of a canvas, fetched and prepared once the canvas is there; null until then and wherever it cannot be had. */
const usePainter = (canvas: RefObject<HTMLCanvasElement | null>): Painter | null => {
  const [painter, setPainter] = useState<Painter | null>(null);
  useEffect(() => {
    const element = canvas.current;
    if (element === null) return;
    const state = { isGone: false };
    const lost = (): void => setPainter(null);
    const prepare = async (): Promise<void> => {
      try {
        const { painterFor } = await import("./scope-painter.ts");
        const made = state.isGone ? null : await painterFor({ onto: element, onLost: lost });
        if (!state.isGone) setPainter(made);
      } catch {
        // Without its chunk or its context the drawing stays, and says the same.
        setPainter(null);
      }
    };
    prepare().catch(lost);
    return () => {
      state.isGone = true;
    };
  }, [canvas]);
  return painter;
};

const restPx = (element: HTMLCanvasElement): number =>
  Math.round(Math.min(MOST_PX, Math.max(LEAST_PX, element.clientWidth * Math.min(2, window.devicePixelRatio))));

/** The scope in a hand: every change draws the words at rest, and paints small at once and full at rest. */
export const useScope = (station: StationId): ScopeHand => {
  const canvas = useRef<HTMLCanvasElement | null>(null);
  const [setting, setSetting] = useState(() => settingAt(station));
  const [rested, setRested] = useState(setting);
  const [painted, setPainted] = useState<ScopeSetting | null>(null);
  const [tookMs, setTookMs] = useState<number | null>(null);
  const painter = usePainter(canvas);
  const figure = useMemo(() => scopeFigure(scopeModelOf(rested)), [rested]);

  useEffect(() => {
    const timer = setTimeout(() => setRested(setting), REST_MS);
    return () => clearTimeout(timer);
  }, [setting]);

  useEffect(() => {
    const element = canvas.current;
    if (painter === null || element === null) return;
    const isAtRest = setting === rested;
    const paint = async (): Promise<void> => {
      const uniforms = uniformsOf(scopeModelOf(setting));
      if (!(await painter.paint(uniforms, MOVING_PX))) return;
      setPainted(setting);
      if (!isAtRest) return;
      const start = performance.now();
      if (await painter.paint(uniforms, restPx(element))) setTookMs(Math.round(performance.now() - start));
    };
    paint().catch(() => setPainted(null));
    return painter.stop;
  }, [painter, setting, rested]);

  const change = (part: Partial<ScopeSetting>): void => setSetting((before) => ({ ...before, ...part }));
  return { setting, figure, said: figure.said, isPainted: painter !== null && painted !== null, tookMs, canvas, change };
};
