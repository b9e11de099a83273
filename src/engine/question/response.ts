/** What a learner may send, one shape a kind. Numbers stay the text that was typed. */

/** The legal answers that are not a number. Every sum offers all three, so that offering them is no hint. */
export const SAYS = ["none", "cannot-be-told", "ask-locally"] as const;
export type Says = (typeof SAYS)[number];

export interface PointText {
  readonly xMm: string;
  readonly yMm: string;
}

export type SumResponse =
  | { readonly kind: "sum"; readonly text: string }
  | { readonly kind: "sum"; readonly texts: Readonly<Record<string, string>> }
  | { readonly kind: "sum"; readonly says: Says };
export interface RangeResponse { readonly kind: "range"; readonly from: string; readonly to: string }
export interface MarkResponse { readonly kind: "mark"; readonly points: Readonly<Record<string, PointText>> }
export interface LineResponse { readonly kind: "line"; readonly angleDeg: string; readonly depthMm: string }
export interface OrderResponse { readonly kind: "order"; readonly cards: readonly string[] }
export interface TrayResponse { readonly kind: "tray"; readonly found: readonly string[] }
export interface NameResponse { readonly kind: "name"; readonly picks: Readonly<Record<string, string>> }
export interface CountResponse { readonly kind: "count"; readonly byClass: Readonly<Record<string, string>> }
export interface JudgeResponse { readonly kind: "judge"; readonly picks: string; readonly reasons: readonly string[] }
export interface ChainResponse { readonly kind: "chain"; readonly steps: readonly Response[] }

export type Response =
  | SumResponse
  | RangeResponse
  | MarkResponse
  | LineResponse
  | OrderResponse
  | TrayResponse
  | NameResponse
  | CountResponse
  | JudgeResponse
  | ChainResponse;

export const KINDS = ["sum", "range", "mark", "line", "order", "tray", "name", "count", "judge", "chain"] as const;
export type Kind = (typeof KINDS)[number];

type Fields = Readonly<Record<string, unknown>>;

const MOST_TEXT = 500;
const MOST_ENTRIES = 100;

const isFields = (value: unknown): value is Fields => typeof value === "object" && value !== null && !Array.isArray(value);
const isText = (value: unknown): value is string => typeof value === "string" && value.length <= MOST_TEXT;
const isTexts = (value: unknown): boolean => Array.isArray(value) && value.length <= MOST_ENTRIES && value.every(isText);
const isRecordOf = (value: unknown, holds: (entry: unknown) => boolean): boolean =>
  isFields(value) && Object.keys(value).length <= MOST_ENTRIES && Object.entries(value).every(([key, entry]) => isText(key) && holds(entry));
const isPoint = (value: unknown): boolean => isFields(value) && hasOnly(value, ["xMm", "yMm"]) && isText(value["xMm"]) && isText(value["yMm"]);
const hasOnly = (value: Fields, keys: readonly string[]): boolean =>
  Object.keys(value).length === keys.length && keys.every((key) => Object.hasOwn(value, key));
const isSays = (value: unknown): value is Says => SAYS.some((says) => says === value);

const isSum = (value: Fields): boolean => {
  if (hasOnly(value, ["kind", "text"])) return isText(value["text"]);
  if (hasOnly(value, ["kind", "texts"])) return isRecordOf(value["texts"], isText);
  return hasOnly(value, ["kind", "says"]) && isSays(value["says"]);
};

const GUARDS: Readonly<Record<Kind, (value: Fields) => boolean>> = {
  sum: isSum,
  range: (value) => hasOnly(value, ["kind", "from", "to"]) && isText(value["from"]) && isText(value["to"]),
  mark: (value) => hasOnly(value, ["kind", "points"]) && isRecordOf(value["points"], isPoint),
  line: (value) => hasOnly(value, ["kind", "angleDeg", "depthMm"]) && isText(value["angleDeg"]) && isText(value["depthMm"]),
  order: (value) => hasOnly(value, ["kind", "cards"]) && isTexts(value["cards"]),
  tray: (value) => hasOnly(value, ["kind", "found"]) && isTexts(value["found"]),
  name: (value) => hasOnly(value, ["kind", "picks"]) && isRecordOf(value["picks"], isText),
  count: (value) => hasOnly(value, ["kind", "byClass"]) && isRecordOf(value["byClass"], isText),
  judge: (value) => hasOnly(value, ["kind", "picks", "reasons"]) && isText(value["picks"]) && isTexts(value["reasons"]),
  chain: (value) => hasOnly(value, ["kind", "steps"]) && isStepList(value["steps"]),
};

const isStepList = (value: unknown): boolean =>
  Array.isArray(value) && value.length > 0 && value.length <= MOST_ENTRIES && value.every((step) => isResponse(step) && step.kind !== "chain");

/** True for a well-formed response of any kind; used on whatever comes from storage or a stranger. */
export const isResponse = (value: unknown): value is Response => {
  if (!isFields(value)) return false;
  const kind = KINDS.find((known) => known === value["kind"]);
  return kind !== undefined && GUARDS[kind](value);
};
