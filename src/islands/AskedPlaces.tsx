import { type PointerEvent, type ReactNode, useId, useMemo, useState } from "react";
import type { Point } from "../engine/geometry/vec2.ts";
import type { MarkItem } from "../engine/question/item.ts";
import type { MarkResponse, Response } from "../engine/question/response.ts";
import { placeUnder, ringsChosen } from "../figures/places-in-picture.ts";
import type { Own } from "../figures/pictures/picture.ts";
import { type AskedPart, describedBy, isInvalid } from "./asked-part.ts";
import { ItemPicture, usePicture } from "./ItemPicture.tsx";

/** Where the places stand, and what lies under a point of it, given as shares of its width. */
export interface Stage {
  readonly name: "stage" | "stage tall";
  readonly drawing: ReactNode;
  readonly pointUnder: (name: "wide" | "narrow", xShare: number, yShare: number) => Point | null;
}

/** The numbered place nearest to a point of the picture. */
const nearest = (item: MarkItem, { pointUnder }: Stage, event: PointerEvent<HTMLElement>): string | null => {
  const svg = [...event.currentTarget.querySelectorAll("svg")].find((one) => one.getBoundingClientRect().width > 0);
  if (!svg) return null;
  const box = svg.getBoundingClientRect();
  const [xShare, yShare] = [(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.width];
  const point = pointUnder(svg.classList.contains("narrow") ? "narrow" : "wide", xShare, yShare);
  if (!point) return null;
  const far = ({ xMm, yMm }: { readonly xMm: string; readonly yMm: string }): number => Math.hypot(Number(xMm) - point.xMm, Number(yMm) - point.yMm);
  return [...item.regions].sort((first, second) => far(first) - far(second))[0]?.id ?? null;
};

interface AskedPlacesProps extends AskedPart<MarkItem> {
  /** The stage for the regions that were chosen so far. */
  readonly stageFor: (chosen: readonly string[]) => Stage;
}

type Picks = Readonly<Record<string, string>>;

/** Where the chosen places lie, as an answer. */
const marksOf = (item: MarkItem, picks: Picks): MarkResponse => {
  const points = item.targets.flatMap((target) => {
    const region = item.regions.find((one) => one.id === picks[target.id]);
    return region ? [[target.id, { xMm: region.xMm, yMm: region.yMm }] as const] : [];
  });
  return { kind: "mark", points: Object.fromEntries(points) };
};

/** The places that were chosen before a reload. */
const begunWith = (item: MarkItem, draft: Response | null | undefined): Picks => {
  const points = draft?.kind === "mark" ? Object.entries(draft.points) : [];
  return Object.fromEntries(points.flatMap(([target, point]) => item.regions.filter(({ xMm, yMm }) => xMm === point.xMm && yMm === point.yMm).map(({ id }) => [target, id] as const)));
};

/** Places to be pointed at on a stage, or chosen by their numbers. */
export const AskedPlaces = ({ item, words, stageFor, draft, onDraft, onAnswer, ...rest }: AskedPlacesProps) => {
  const id = useId();
  const [picks, setPicks] = useState<Picks>(() => begunWith(item, draft));
  const [active, setActive] = useState(item.targets[0]?.id ?? "");
  const stage = stageFor(Object.values(picks));
  const pick = (target: string, region: string): void => {
    const next = { ...picks, [target]: region };
    setPicks(next);
    onDraft?.(marksOf(item, next));
    setActive(item.targets.find((one) => next[one.id] === undefined)?.id ?? target);
  };
  const onPointerDown = (event: PointerEvent<HTMLElement>): void => {
    const region = nearest(item, stage, event);
    if (region !== null) pick(active, region);
  };
  return (
    <div className="instrument">
      <div className={stage.name} onPointerDown={onPointerDown}>{stage.drawing}</div>
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
        <div className="btns needs-script"><button type="button" className="main" onClick={() => onAnswer(marksOf(item, picks))}>{words.card.check}</button></div>
      </div>
    </div>
  );
};

/** An answer so far, for the part of a picture that shows it. */
const ownSoFar = (item: MarkItem, ids: readonly string[]): Own => {
  const points = ids.flatMap((id) => item.regions.filter((region) => region.id === id)).map(({ xMm, yMm }, at) => [String(at), { xMm, yMm }] as const);
  return { values: {}, response: { kind: "mark", points: Object.fromEntries(points) } };
};

interface RingedProps extends Pick<AskedPart<MarkItem>, "item" | "words" | "picture"> {
  /** Ids of the chosen regions, with spaces between them. */
  readonly chosen: string;
}

/** The question's picture with what was chosen so far ringed; as it was built until that has been drawn. */
const Ringed = ({ item, words, picture, chosen }: RingedProps) => {
  const own = useMemo(() => ownSoFar(item, chosen.split(" ")), [item, chosen]);
  const drawn = usePicture(item, own);
  return drawn ? <ItemPicture picture={drawn} words={words} /> : picture;
};

const drawingFor = ({ item, words, picture }: AskedPart<MarkItem>, chosen: readonly string[]): ReactNode =>
  ringsChosen(item) && chosen.length > 0 ? <Ringed item={item} words={words} picture={picture} chosen={chosen.join(" ")} /> : picture;

/** Places that stand in the question's own picture. */
export const AskedInPicture = (props: AskedPart<MarkItem>) =>
  <AskedPlaces {...props} stageFor={(chosen) => ({ name: "stage tall", drawing: drawingFor(props, chosen), pointUnder: (_, xShare, yShare) => placeUnder(props.item, xShare, yShare) })} />;
