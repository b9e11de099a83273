import { withUnit } from "../../engine/quantity/format.ts";
import { element } from "../markup.ts";
import { aboutOf, type DrawPicture, drawn, END, givenOf, inWords, line, MIDDLE, WIDTH_PX, words } from "./picture.ts";

const FLOOR_PX = 318;
const PER_CM = 1.2;
const GREATEST_CM = 250;
const KNEE_X = 150;
const STAND_X = 262;
const DEFAULT_JOINT_CM = 92;
const UNDER_JOINT_CM = 12;

const yAt = (aboveFloorCm: number): number => FLOOR_PX - Math.min(GREATEST_CM, aboveFloorCm) * PER_CM;

/** The floor, a table with a bent knee on it, and a bare stand. */
const room = (jointCm: number, tableCm: number): string => {
  const [joint, table] = [yAt(jointCm), yAt(tableCm)];
  return [
    line(`M0 ${FLOOR_PX}H${WIDTH_PX}`),
    line(`M56 ${table}H210V${table + 12}H56Z`, "t-plateau"),
    line(`M76 ${table + 12}V${FLOOR_PX}M190 ${table + 12}V${FLOOR_PX}`, "t-thin"),
    // Thigh up to the joint, shank down from it: a knee bent over the table.
    line(`M70 ${table - 4}Q110 ${joint - 8} ${KNEE_X} ${joint - 9}Q${KNEE_X + 14} ${joint - 6} ${KNEE_X + 22} ${joint + 16}L${KNEE_X + 34} ${table - 2}M70 ${table}`),
    line(`M84 ${table - 1}Q118 ${joint + 8} ${KNEE_X - 4} ${joint + 10}L${KNEE_X + 12} ${table - 1}`),
    line(`M${STAND_X} ${yAt(GREATEST_CM) - 6}V${FLOOR_PX}M${STAND_X - 22} ${FLOOR_PX}H${STAND_X + 22}M${STAND_X - 8} ${yAt(GREATEST_CM) - 6}H${STAND_X + 8}`, "t-thin"),
    element("circle", { class: "k-dot", cx: KNEE_X, cy: joint, r: 4.5 }),
  ].join("");
};

/** A bag whose fluid stands at a height, with its line to the joint. */
const bag = (levelCm: number, jointCm: number, isOwn: boolean): string => {
  const level = yAt(levelCm);
  const name = isOwn ? "dimmine" : "t-out";
  return [
    line(`M${STAND_X - 17} ${level - 16}H${STAND_X + 17}V${level + 22}Q${STAND_X + 17} ${level + 30} ${STAND_X + 5} ${level + 34}H${STAND_X - 5}Q${STAND_X - 17} ${level + 30} ${STAND_X - 17} ${level + 22}Z`, name),
    line(`M${STAND_X - 17} ${level}q8.5 -4 17 0t17 0`, name),
    line(`M${STAND_X - 4} ${level + 34}Q${STAND_X - 26} ${yAt(jointCm) + 30} ${KNEE_X + 8} ${yAt(jointCm) + 1}`, isOwn ? "dimmine" : "t-thin"),
  ].join("");
};

/** A height with its two ends and its number; the number stands left of the line. */
const height = (x: number, [fromCm, toCm]: readonly [number, number], text: string): string =>
  line(`M${x} ${yAt(fromCm)}V${yAt(toCm)}M${x - 5} ${yAt(fromCm)}h10M${x - 5} ${yAt(toCm)}h10`, "dimline") + words(x - 7, (yAt(fromCm) + yAt(toCm)) / 2 + 5, [text, { ...END, class: "num" }]);

const level = (levelCm: number): string => line(`M${STAND_X + 17} ${yAt(levelCm)}H${WIDTH_PX - 12}`, "drop");
const cm = (value: number): string => withUnit(String(value), "cm");
const side = (x: number, cmAbove: number, [text, name]: readonly [string, string]): string => words(x, yAt(cmAbove), [text, { ...MIDDLE, class: name }]);

/** A standing bag and a joint, both measured from the floor; after an answer the learner's pressure beside the joint. */
export const bagOverJoint: DrawPicture = (item, own) => {
  const [levelCm, jointCm] = [givenOf(item, "levelAboveFloorCm"), givenOf(item, "jointAboveFloorCm")];
  const pressure = own?.values["pressureMmHg"];
  const said = pressure === undefined ? "" : `Your pressure of ${withUnit(pressure.toFixed(0), "mmHg")} stands beside the joint.`;
  const drawing = [
    room(jointCm, jointCm - UNDER_JOINT_CM),
    bag(levelCm, jointCm, false),
    level(levelCm),
    height(52, [0, jointCm], cm(jointCm)),
    height(WIDTH_PX - 12, [0, levelCm], cm(levelCm)),
    pressure === undefined ? "" : side(KNEE_X - 6, jointCm + 14, [`yours ${withUnit(pressure.toFixed(0), "mmHg")}`, "dimmine-t"]),
  ];
  return {
    markup: drawn({ name: "small", heightPx: FLOOR_PX + 12 }, drawing),
    text: inWords(`Side view, heights in proportion: the joint lies ${cm(jointCm)} above the floor, the fluid in the bag stands ${cm(levelCm)} above the floor.`, said),
    ...(said === "" ? {} : { own: said }),
  };
};

/** A bare stand beside a table; after an answer the bag hangs where the learner put it. */
export const bagToHang: DrawPicture = (item, own) => {
  const [tableCm, overTableCm] = [givenOf(item, "tableAboveFloorCm"), givenOf(item, "jointAboveTableCm")];
  const jointCm = tableCm + overTableCm;
  const wanted = withUnit(String(givenOf(item, "wantedMmHg")), "mmHg");
  const hung = own?.values["aboveFloorCm"];
  const isInside = hung !== undefined && hung > 0 && hung <= GREATEST_CM;
  const said = hung === undefined ? "" : `Your level stands ${cm(hung)} above the floor${isInside ? "" : ", which is outside the picture"}.`;
  const drawing = [
    room(jointCm, tableCm),
    isInside ? bag(hung, jointCm, true) + words(STAND_X + 22, yAt(hung) + 6, [cm(hung), { class: "dimmine-t" }]) : "",
    height(52, [0, tableCm], cm(tableCm)),
    height(52, [tableCm, jointCm], cm(overTableCm)),
    side(KNEE_X - 6, jointCm + 14, [`${wanted} wanted`, "num"]),
  ];
  return {
    markup: drawn({ name: "small", heightPx: FLOOR_PX + 12 }, drawing),
    text: inWords(`Side view, heights in proportion: the table top stands ${cm(tableCm)} above the floor, the joint lies ${cm(overTableCm)} above the table top. Beside it a stand without a bag. Wanted in the joint: ${wanted}.`, said),
    ...(said === "" ? {} : { own: said }),
  };
};

/** A bag on its own stand over a joint whose table moves. */
export const bagOverMovingTable: DrawPicture = (item, own) => {
  const [aboveCm, movedCm] = [givenOf(item, "levelAboveJointCm"), givenOf(item, "movedCm")];
  const isDown = aboutOf(item, "way") === "down";
  const levelCm = DEFAULT_JOINT_CM + aboveCm;
  const tableY = yAt(DEFAULT_JOINT_CM - UNDER_JOINT_CM);
  const arrow = isDown ? `M40 ${tableY}v${movedCm * PER_CM}l-5 -7m5 7l5 -7` : `M40 ${tableY}v${-movedCm * PER_CM}l-5 7m5 -7l5 7`;
  const pressure = own?.values["pressureMmHg"];
  const said = pressure === undefined ? "" : `Your pressure afterwards, ${withUnit(pressure.toFixed(0), "mmHg")}, stands beside the joint.`;
  const drawing = [
    room(DEFAULT_JOINT_CM, DEFAULT_JOINT_CM - UNDER_JOINT_CM),
    bag(levelCm, DEFAULT_JOINT_CM, false),
    level(levelCm),
    line(`M${KNEE_X + 8} ${yAt(DEFAULT_JOINT_CM)}H${WIDTH_PX - 12}`, "drop"),
    height(WIDTH_PX - 12, [DEFAULT_JOINT_CM, levelCm], cm(aboveCm)),
    line(arrow, "dimstrong"),
    words(4, tableY + (isDown ? -14 : 26), [`${isDown ? "down" : "up"} ${cm(movedCm)}`, { class: "num" }]),
    pressure === undefined ? "" : side(KNEE_X - 6, DEFAULT_JOINT_CM + 14, [`yours ${withUnit(pressure.toFixed(0), "mmHg")}`, "dimmine-t"]),
  ];
  return {
    markup: drawn({ name: "small", heightPx: FLOOR_PX + 12 }, drawing),
    text: inWords(`Side view before the table moves, heights in proportion: the fluid in the bag stands ${cm(aboveCm)} above the joint, on a stand of its own. The table goes ${isDown ? "down" : "up"} by ${cm(movedCm)}.`, said),
    ...(said === "" ? {} : { own: said }),
  };
};
