import { element } from "../markup.ts";
import { aboutOf, type DrawPicture, drawn, FONT_PX, inWords, linesOf, MIDDLE, type Own, WIDTH_PX, words } from "./picture.ts";

const COLUMNS = 4;
const CELL_PX = WIDTH_PX / COLUMNS;
const RADIUS_PX = 36;
const ROW_PX = 146;
const LETTERS = 11;

interface Face {
  /** What happened at that time. */
  readonly name: string;
  readonly time: string;
  readonly isOwn?: true;
}

const hand = (turn: number, lengthPx: number, [name, width]: readonly [string, number]): string => {
  const angle = turn * 2 * Math.PI;
  return element("path", { class: name, "stroke-width": width, d: `M0 0L${(lengthPx * Math.sin(angle)).toFixed(1)} ${(-lengthPx * Math.cos(angle)).toFixed(1)}` });
};

const ticks = Array.from({ length: 12 }, (_, hour) => {
  const angle = (hour / 12) * 2 * Math.PI;
  const at = (radius: number): string => `${(radius * Math.sin(angle)).toFixed(1)} ${(-radius * Math.cos(angle)).toFixed(1)}`;
  return `M${at(RADIUS_PX - (hour % 3 === 0 ? 8 : 5))}L${at(RADIUS_PX - 1)}`;
}).join("");

/** A clock with its hands, what happened then above it and the time below. */
const face = ({ name, time, isOwn }: Face, at: number): string => {
  const [hours = 0, minutes = 0] = time.split(":").map(Number);
  const stroke = isOwn ? "mine" : "ndl";
  const names = linesOf(name, LETTERS);
  return element("g", { transform: `translate(${((at % COLUMNS) * CELL_PX + CELL_PX / 2).toFixed(1)} ${Math.floor(at / COLUMNS) * ROW_PX + 76})` }, [
    ...names.map((text, row) => words(0, -RADIUS_PX - 8 - (names.length - 1 - row) * (FONT_PX + 2), [text, { ...MIDDLE, ...(isOwn ? { class: "dimmine-t" } : {}) }])),
    element("circle", { class: isOwn ? "grip" : "t-out", r: RADIUS_PX }),
    element("path", { class: "t-thin", d: ticks }),
    hand(((hours % 12) + minutes / 60) / 12, RADIUS_PX * 0.52, [stroke, 3.6]),
    hand(minutes / 60, RADIUS_PX * 0.82, [stroke, 2]),
    words(0, RADIUS_PX + 21, [time, { ...MIDDLE, class: isOwn ? "dimmine-t" : "num" }]),
  ].join(""));
};

const faces = (times: readonly Face[]): ReturnType<DrawPicture> => {
  const rows = Math.ceil(times.length / COLUMNS);
  const mine = times.find(({ isOwn }) => isOwn);
  const said = mine ? `Your time: ${mine.time}.` : "";
  return {
    markup: drawn({ name: "small", heightPx: rows * ROW_PX }, times.map(face)),
    text: inWords("Clocks, one for each time of the question.", `${times.filter(({ isOwn }) => !isOwn).map(({ name, time }) => `${name} ${time}`).join("; ")}.`, said),
    ...(said === "" ? {} : { own: said }),
  };
};

/** A time out of the learner's hour and minute; none where they make no time of day. */
const ownTime = (own: Own | undefined, [hourKey, minuteKey, name]: readonly [string, string, string]): readonly Face[] => {
  const [hour, minute] = [own?.values[hourKey], own?.values[minuteKey]];
  const isTime = hour !== undefined && minute !== undefined && Number.isInteger(hour) && Number.isInteger(minute) && hour >= 0 && hour < 24 && minute >= 0 && minute < 60;
  return isTime ? [{ name, time: `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`, isOwn: true }] : [];
};

/** Clocks for the times that a question names, and for the time that it asks, once the learner has named one. */
const clocksOf = (named: readonly (readonly [key: string, name: string])[], asked?: readonly [string, string, string]): DrawPicture => (item, own) =>
  faces([...named.map(([key, name]) => ({ name, time: aboutOf(item, key) })), ...(asked ? ownTime(own, asked) : [])]);

/** When the cuff went up, when the skin was cut and what time it is; after an answer the learner's alarm. */
export const cuffClock = clocksOf([["upAt", "cuff up"], ["cutAt", "skin cut"], ["nowAt", "now"]], ["alarmHour", "alarmMinute", "your alarm"]);

/** Two periods under pressure with the rest between them. */
export const periodClocks = clocksOf([["firstUpAt", "cuff up"], ["downAt", "down"], ["againUpAt", "up again"], ["nowAt", "now"]]);

/** The first dose, the cut, and when the loss was seen; after an answer the learner's next dose. */
export const doseClock = clocksOf([["start", "dose begun"], ["incision", "skin cut"], ["seen", "loss seen"]], ["hourH", "minuteMin", "your next dose"]);
