import { useEffect, useState } from "react";
import { linkText } from "../../engine/record/list-link.ts";
import { isLink, listInAddress, type OpenedList, openedList } from "./open-list.ts";

export interface ListInAddress {
  readonly opened: OpenedList;
  /** Opens what was typed; the address then names the list, so that it can be come back to. */
  readonly open: (text: string) => void;
  readonly close: () => void;
}

/** The teaching list that the address names. */
export const useList = (): ListInAddress => {
  const [opened, setOpened] = useState<OpenedList>(null);
  useEffect(() => {
    const read = (): void => setOpened(listInAddress());
    read();
    window.addEventListener("hashchange", read);
    return () => window.removeEventListener("hashchange", read);
  }, []);
  const open = (text: string): void => {
    const next = openedList(text);
    if (next !== null && "list" in next) window.location.hash = isLink(text) ? linkText(next.list) : text.replace(/[^\w-]/g, "");
    setOpened(next);
  };
  return { opened, open, close: () => { window.location.hash = ""; } };
};
