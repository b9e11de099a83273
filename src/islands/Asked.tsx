import { type ComponentType, type ReactNode, useEffect, useId, useRef, useState } from "react";
import { unitText } from "../engine/quantity/format.ts";
import type { Item, Option, ShownAsk } from "../engine/question/item.ts";
import type { Response } from "../engine/question/response.ts";
import type { AskVerdict } from "../engine/question/verdict.ts";
import { filled, type Words } from "../facts/words.ts";
import { isInMap } from "../figures/places-in-picture.ts";
import { AskedJudge, AskedName, AskedTray } from "./AskedChoices.tsx";
import { AskedChain } from "./AskedChain.tsx";
import { AskedCount, AskedRange } from "./AskedNumbers.tsx";
import { AskedOrder } from "./AskedOrder.tsx";
import { AskedInPicture } from "./AskedPlaces.tsx";
import { AskedSum } from "./AskedSum.tsx";
import type { AskedPart } from "./asked-part.ts";
import { Glyph } from "./Glyph.tsx";
import { ItemPicture, usePicture } from "./ItemPicture.tsx";
import { Stem } from "./Stem.tsx";

type MapPartType = ComponentType<AskedPart<Item>>;

interface AskedProps {
  readonly item: Item;
  readonly words: Words;
  /** Parts that could not be read in the last try. */
  readonly problems: readonly AskVerdict[];
  readonly trouble: string;
  /** The picture of this question as it was built into the page; absent for a question drawn since. */
  readonly built?: ReactNode;
  /** The part that is answered in the map of the knee, where the page brings it; fetched where it does not. */
  readonly mapPart?: MapPartType | undefined;
  /** What was typed before a reload and not checked, and who is told of what is typed now. */
  readonly draft?: Response | null | undefined;
  readonly onDraft?: ((response: Response) => void) | undefined;
  readonly onAnswer: (response: Response) => void;
}

/** Boxes of sums, alone or in a chain. */
const asksOf = (item: Item): readonly ShownAsk[] => {
  if (item.kind === "sum") return item.asks;
  return item.kind === "chain" ? item.steps.flatMap(({ asks }) => asks) : [];
};

/** Named parts of the kinds that are answered in words. */
const namedParts = (item: Item): readonly Option[] => {
  if (item.kind === "count") return item.classes;
  if (item.kind === "name") return item.attributes;
  return item.kind === "mark" ? item.targets : [];
};

/** Label and unit of a part of an answer, for the sentence that says what is wrong with it. */
const partOf = (item: Item, part: string, words: Words): { readonly label: string; readonly unit: string } => {
  const ask = asksOf(item).find(({ id }) => id === part);
  if (ask) return { label: ask.label, unit: unitText(ask.unit) };
  if (item.kind === "range") return { label: part === "from" ? words.parts.from : words.parts.to, unit: unitText(item.unit) };
  return { label: namedParts(item).find(({ id }) => id === part)?.text ?? words.parts.decision, unit: "" };
};

/** What keeps a text from being a count: an example with a decimal and a unit would lead astray there. */
const UNCOUNTED: readonly string[] = ["no-number", "too-long", "fraction"];

const sentenceFor = ({ reason = "no-number", found = "", ask }: AskVerdict, item: Item, words: Words): string => {
  const part = partOf(item, ask, words);
  // What is counted in pieces has no unit that the sentence could name.
  const isUnitToCount = part.unit === "" && (reason === "foreign-unit" || reason === "unknown-unit");
  if (item.kind === "count" && UNCOUNTED.includes(reason)) return words.noCount;
  return filled(isUnitToCount ? words.noUnit : words.reasons[reason], { found, ...part });
};

/** The map, fetched when a question that is answered in it comes up on a page that did not bring it. */
const FetchedMap = (props: AskedPart<Item>) => {
  const [Fetched, setFetched] = useState<MapPartType | null>(null);
  useEffect(() => {
    // Without the map the question cannot be answered here; what it asks still stands above.
    import("./MapPart.tsx").then(({ MapPart }) => setFetched(() => MapPart), () => undefined);
  }, []);
  return Fetched ? <Fetched {...props} /> : null;
};

/** The part of the card that takes the answer, by kind. */
const Part = (props: AskedPart<Item>) => {
  const { item, ...rest } = props;
  if (item.kind === "sum") return <AskedSum {...rest} item={item} />;
  if (item.kind === "order") return <AskedOrder {...rest} item={item} />;
  if (item.kind === "judge") return <AskedJudge {...rest} item={item} />;
  if (item.kind === "name") return <AskedName {...rest} item={item} />;
  if (item.kind === "tray") return <AskedTray {...rest} item={item} />;
  if (item.kind === "count") return <AskedCount {...rest} item={item} />;
  if (item.kind === "mark") return <AskedInPicture {...rest} item={item} />;
  if (item.kind === "chain") return <AskedChain {...rest} item={item} />;
  return item.kind === "range" ? <AskedRange {...rest} item={item} /> : null;
};

/** The picture of a question that was drawn after the page was built. */
const DrawnPicture = ({ item, words }: Pick<AskedProps, "item" | "words">) => {
  const picture = usePicture(item);
  return picture ? <ItemPicture picture={picture} words={words} /> : null;
};

/** Brings the first part that is open into view with the focus, where a long question has scrolled it away. */
const useOpenPart = (problems: readonly AskVerdict[]) => {
  const status = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const open = problems.length === 0 ? null : status.current?.parentElement?.querySelector<HTMLElement>("[aria-invalid=true]");
    const { top = 0, bottom = 0 } = open?.getBoundingClientRect() ?? {};
    if (!open || (top >= 0 && bottom <= window.innerHeight)) return;
    (open.querySelector<HTMLElement>("input") ?? open).focus({ preventScroll: true });
    open.scrollIntoView({ block: "center" });
  }, [problems]);
  return status;
};

/** The question as it is asked: case, givens, and the part that takes the answer. */
export const Asked = ({ item, words, problems, trouble, built, mapPart = FetchedMap, draft, onDraft, onAnswer }: AskedProps) => {
  const id = useId();
  const status = useOpenPart(problems);
  const Answering = isInMap(item) ? mapPart : Part;
  const picture = built ?? <DrawnPicture item={item} words={words} />;
  return (
    <>
      <Stem item={item} />
      {item.kind === "mark" ? null : picture}
      <p className="question" id={`${id}-q`}>{item.question}</p>
      <Answering item={item} words={words} problems={problems} picture={picture} draft={draft} onDraft={onDraft} onAnswer={onAnswer} questionId={`${id}-q`} problemId={`${id}-p`} />
      <div id={`${id}-p`} role="status" ref={status} className="needs-script">
        {problems.map((problem) => (
          <p className="problem" key={problem.ask}><Glyph id="v-not-recognised" /><span><b>{words.verdicts["not-recognised"]}.</b> {sentenceFor(problem, item, words)} {words.nothingCounted}</span></p>
        ))}
        {trouble === "" ? null : <p className="problem">{trouble}</p>}
      </div>
    </>
  );
};
