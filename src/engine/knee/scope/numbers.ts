import { type Formula, setting } from "./formula.ts";

/**
 * The numbers of a scene, in the order in which programs and shaders take them. Lengths are in mm of the reference knee
 * (the one of scale 1), angles in radians; `…M` and `…L` are the medial and the lateral one of a pair.
 */
export const NUMBERS = [
  // Position of the joint.
  "flexion", "gapM", "gapL",
  // Shape of the femur.
  "condyleFront", "condyleUp", "condyleX_M", "condyleX_L", "condyleHalf_M", "condyleHalf_L", "condyleCrown_M", "condyleCrown_L", "contactY", "rollBack",
  "roofY", "roofZ", "roofHalfX", "roofHalfY", "roofHalfZ",
  // Shape of the tibia.
  "dishM", "crownL", "spineM", "spineL", "frontDrop", "backDrop",
  // Menisci: from the axial map; heights beside them.
  "rimX_M", "rimX_L", "rimY_M", "rimY_L", "rimR_M", "rimR_L", "freeX_M", "freeX_L", "freeY_M", "freeY_L", "freeR_M", "freeR_L", "hornA_M", "hornA_L", "hornP_M", "hornP_L",
  "heightA_M", "heightA_L", "heightB_M", "heightB_L", "heightP_M", "heightP_L", "freeEdge",
  // Cruciates: foot on the tibia, and on the femur in its own frame.
  "aclX", "aclY", "aclZ", "aclFX", "aclFY", "aclFZ", "aclWide", "aclThick", "pclX", "pclY", "pclZ", "pclFX", "pclFY", "pclFZ", "pclWide", "pclThick",
  // Popliteus tendon at the height of the meniscus, and its way down and up from there.
  "popX", "popY", "popR", "popZ", "popDownX", "popDownY", "popDownZ", "popUpX", "popUpY", "popUpZ", "hiatus",
  // Soft parts.
  "wall", "frontX", "frontY", "frontHalfX", "frontHalfY", "recess", "fatX", "fatY", "fatZ", "fatHalfX", "fatHalfY", "fatHalfZ", "fatCarve",
  // The scope itself: its tip and a point of its shaft.
  "tipX", "tipY", "tipZ", "portalX", "portalY", "portalZ",
  // Lesions. A cut stands at a rim angle, opens by its width, and reaches a share of the width from the free edge.
  "cutAt_M", "cutAt_L", "cutOpen_M", "cutOpen_L", "cutReach_M", "cutReach_L", "cutSlant_M", "cutSlant_L", "flapLift_M", "flapLift_L", "splitOpen_M", "splitOpen_L",
  "rampOpen", "stripOpen_M", "stripOpen_L", "stripAt", "stripMove", "stripSide",
  // Instruments: a probe with its hook, a needle, four stitches.
  "probeAX", "probeAY", "probeAZ", "probeBX", "probeBY", "probeBZ", "probeCX", "probeCY", "probeCZ", "probeR",
  "needleAX", "needleAY", "needleAZ", "needleBX", "needleBY", "needleBZ", "needleR",
  "stitch0X", "stitch0Y", "stitch0Z", "stitch0U", "stitch0V", "stitch0W", "stitch1X", "stitch1Y", "stitch1Z", "stitch1U", "stitch1V", "stitch1W",
  "stitch2X", "stitch2Y", "stitch2Z", "stitch2U", "stitch2V", "stitch2W", "stitch3X", "stitch3Y", "stitch3Z", "stitch3U", "stitch3V", "stitch3W", "stitchR",
] as const;

export type NumberName = (typeof NUMBERS)[number];
export type SceneNumbers = Readonly<Record<NumberName, number>>;

const PLACES: ReadonlyMap<string, number> = new Map(NUMBERS.map((name, index) => [name, index]));

/** A number of the scene as a formula. */
export const its = (name: NumberName): Formula => setting(PLACES.get(name) ?? -1);

/** The numbers in their order. */
export const inOrder = (numbers: SceneNumbers): readonly number[] => NUMBERS.map((name) => numbers[name]);
