import { useEffect, useState } from "react";

/** What is printed alone: one card, all cards, or the completion list. */
export type Printed = "card" | "cards" | "completion";

/** Prints one part of the page by itself: the part is named to the style sheet until the paper is out. */
export const usePrint = (): readonly [printed: Printed | null, print: (what: Printed) => void] => {
  const [printed, setPrinted] = useState<Printed | null>(null);
  useEffect(() => {
    if (printed === null) return undefined;
    const done = (): void => setPrinted(null);
    window.addEventListener("afterprint", done, { once: true });
    const frame = requestAnimationFrame(() => window.print());
    return () => {
      cancelAnimationFrame(frame);
      window.removeEventListener("afterprint", done);
    };
  }, [printed]);
  return [printed, setPrinted];
};
