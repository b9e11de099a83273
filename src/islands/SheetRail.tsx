import { recordWordsOf } from "../facts/record-words.ts";
import type { SheetState, SlotState } from "./use-sheet.ts";

const words = recordWordsOf("en").sheet;
const STATE_WORDS: Readonly<Record<SlotState, string>> = { answered: words.answered, left: words.leftState, open: words.openState, unopened: words.notOpened };

/** The questions of the sheet with what was done; no verdict can be read from it. */
export const SheetRail = ({ state: { items, slots, at, go } }: { readonly state: SheetState }) => (
  <nav className="rail no-print" aria-label={words.thisSheet}>
    <h2>{words.thisSheet}</h2>
    <ol>
      {items.map((item, index) => (
        <li key={item.seed} className={slots[index]}>
          <button type="button" aria-current={index === at ? "step" : undefined} onClick={() => go(index)}>
            <span className="mark" aria-hidden="true" /><span className="n">{index + 1}</span><span className="t">{item.title}</span><span className="vh">{STATE_WORDS[slots[index] ?? "unopened"]}</span>
          </button>
        </li>
      ))}
    </ol>
    <p className="rail-key" aria-hidden="true">{(["answered", "left", "open", "unopened"] as const).map((slot) => <span key={slot} className={slot}><span className="mark" />{STATE_WORDS[slot]}</span>)}</p>
  </nav>
);
