import type { Level as LevelId } from "../engine/standing/attempt.ts";
import { recordWordsOf } from "../facts/record-words.ts";
import { Glyph } from "./Glyph.tsx";

const TONES: Readonly<Record<LevelId, string>> = { unseen: "steel", read: "", helped: "", worked: "", steady: "act", due: "near", stop: "stop" };

/** The shape of a level and its word. */
export const Level = ({ level }: { readonly level: LevelId }) => (
  <span className={`level ${TONES[level]}`}><Glyph id={`l-${level}`} />{recordWordsOf("en").level[level]}</span>
);
