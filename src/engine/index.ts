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
