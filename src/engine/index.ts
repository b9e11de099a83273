/**
 * The public face of the engine: plain functions of plain JSON, lengths in mm and angles in degrees unless the name
 * says otherwise. Names, parameters and behaviour are a contract; everything else in the rooms may change.
 */

// Needle path and stitches
export { clearanceMm } from "./repair/clearance-mm.ts";
export { depthWindowMm } from "./repair/depth-window-mm.ts";
export { standOffDeg } from "./repair/stand-off-deg.ts";
export { stitchCount } from "./repair/stitch-count.ts";
export { stopSettingMm } from "./repair/stop-setting-mm.ts";
export { zoneAngleDeg } from "./repair/zone-angle-deg.ts";
export { zoneDepthMm } from "./repair/zone-depth-mm.ts";

// The picture
export { fieldInLiquidDeg } from "./optics/field-in-liquid-deg.ts";
export { fieldWidthMm } from "./optics/field-width-mm.ts";
export { sweptConeDeg } from "./optics/swept-cone-deg.ts";

// Fluid
export { annularFlow } from "./fluid/annular-flow.ts";
export { headPressureMmHg } from "./fluid/head-pressure-mm-hg.ts";

// Theatre and kit
export { cappedDoseMg } from "./theatre/capped-dose-mg.ts";
export { cuffWidthCm } from "./theatre/cuff-width-cm.ts";
export { mostVolumeMl } from "./theatre/most-volume-ml.ts";
export { gs1CheckDigit } from "./kit/gs1-check-digit.ts";

// Evidence
export { baseRateBehind } from "./evidence/base-rate-behind.ts";
export { cohenKappa } from "./evidence/cohen-kappa.ts";
export { predictiveValues } from "./evidence/predictive-values.ts";
export { shareNearer } from "./evidence/share-nearer.ts";
export { twoByTwo } from "./evidence/two-by-two.ts";
export { wilson } from "./evidence/wilson.ts";

// Where a learner stands, and how a sheet behaves in a cohort
export { itemRest } from "./cohort/item-rest.ts";
export { kr20 } from "./cohort/kr20.ts";
export { knowledgeAfter } from "./standing/knowledge-after.ts";
export { nextReturn } from "./standing/next-return.ts";
