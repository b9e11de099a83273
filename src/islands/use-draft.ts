import { useCallback, useState } from "react";
import type { Item } from "../engine/question/item.ts";
import type { Response } from "../engine/question/response.ts";
import { forgetDraft, rememberDraft } from "./store/draft.ts";

export interface DraftHere {
  /** What was typed before a reload and not checked; null where nothing was. */
  readonly draft: Response | null;
  readonly keep: (item: Item, response: Response) => void;
  /** Takes up what was typed before. */
  readonly begin: (typed: Response) => void;
  /** The answer was checked: nothing is left to be lost. */
  readonly end: () => void;
}

/** What is typed at one place of a page, kept until it is checked. */
export const useDraft = (place: string): DraftHere => {
  const [draft, setDraft] = useState<Response | null>(null);
  const keep = useCallback((item: Item, response: Response): void => rememberDraft(place, item, response), [place]);
  const end = useCallback((): void => {
    forgetDraft(place);
    setDraft(null);
  }, [place]);
  return { draft, keep, begin: setDraft, end };
};
