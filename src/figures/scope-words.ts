import type { PortalId } from "../engine/knee/knee.ts";
import type { Label, Share, Sighted } from "../engine/knee/scope/in-view.ts";
import type { Pattern } from "../engine/knee/scope/lesion.ts";
import type { StationId } from "../engine/knee/scope/stations.ts";
import { THIN_SPACE, withUnit } from "../engine/quantity/format.ts";
import { cautionText } from "../facts/cautions.ts";
import { agesOf } from "../facts/knee-model.ts";
import type { Instrument } from "./scope-instruments.ts";
import { HOOK_MM } from "./scope-instruments.ts";
import type { ScopeModel } from "./scope-setting.ts";

/** Words of the view through the scope, by language. */
export const SCOPE_WORDS = {
  en: {
    labels: {
      "medial-condyle": "medial femoral condyle", "lateral-condyle": "lateral femoral condyle", "notch-wall": "wall and roof of the notch",
      "medial-plateau": "medial tibial plateau", "lateral-plateau": "lateral tibial plateau", spines: "tibial spines",
      "medial-front-horn": "medial meniscus, front horn", "medial-body": "medial meniscus, body", "medial-back-horn": "medial meniscus, back horn",
      "lateral-front-horn": "lateral meniscus, front horn", "lateral-body": "lateral meniscus, body", "lateral-back-horn": "lateral meniscus, back horn",
      "anterior-cruciate": "anterior cruciate ligament", "posterior-cruciate": "posterior cruciate ligament", popliteus: "popliteus tendon",
      synovium: "synovium on the capsule", fat: "fat pad", strip: "torn strip of meniscus", probe: "probe", needle: "needle", stitch: "stitches", dark: "nothing within reach of the light",
    } satisfies Record<Label, string>,
    stations: {
      "medial-body": "body of the medial meniscus", "medial-horn": "back horn of the medial meniscus", "medial-back": "back horn of the medial meniscus, beside the notch", notch: "notch",
      "lateral-back": "back horn of the lateral meniscus", hiatus: "popliteus tendon at its hiatus", "lateral-body": "body of the lateral meniscus",
    } satisfies Record<StationId, string>,
    patterns: {
      none: "none", longitudinal: "along the fibres", radial: "radial", root: "root", flap: "flap", horizontal: "horizontal", complex: "complex: a cut and a split", ramp: "behind the rim (ramp)", fascicle: "fascicles beside the popliteus tendon", hypermobile: "hypermobile, no tear", discoid: "discoid shape, no tear",
    } satisfies Record<Pattern, string>,
    instruments: { none: "none", probe: "probe", needle: "needle", stitches: "stitches" } satisfies Record<Instrument, string>,
    portals: { AL: "anterolateral", AM: "anteromedial" } satisfies Record<PortalId, string>,
    medial: "medial", lateral: "lateral",
    controls: {
      station: "Looked for", portal: "Portal", view: "Direction of view", turn: "Turn of the scope, clock angle", back: "Drawn back along the shaft", flexion: "Bend of the knee", liquid: "Joint filled with",
      saline: "saline", air: "air", pattern: "Tear", of: "Meniscus of the tear", amount: "How far it gapes or has moved", instrument: "Also in the joint", side: "Side", right: "right", left: "left", ages: "Age band",
      shown: "Shown as", picture: "picture", drawing: "drawing", inView: "In view, by share of the picture:",
    },
  },
} as const;

const words = SCOPE_WORDS.en;
const percent = (share: number): string => `${Math.max(1, Math.round(100 * share))}${THIN_SPACE}%`;
const deg = (value: number): string => `${Math.round(value)}°`;
const HOUR_DEG = 30;

/** A clock angle as an hour: 12 is up in the picture. */
export const hourOf = (clockDeg: number): string => `${(Math.round(clockDeg / HOUR_DEG) + 11) % 12 + 1} o’clock`;

/** What is in view, numbered as in the drawing. */
export const sharesInWords = (shares: readonly Share[]): string => shares.map(({ label, share }, index) => `${index + 1} ${words.labels[label]} ${percent(share)}`).join(", ");

const heldInWords = ({ setting, fieldDeg }: ScopeModel): string => {
  const way = setting.viewDeg === 0 ? "straight-ahead scope" : `${setting.viewDeg}° scope turned to ${hourOf(setting.turnDeg)}`;
  return `A ${setting.side} knee of the model, ${agesOf(setting.band)}, bent ${deg(setting.flexionDeg)}. A ${way} through the ${words.portals[setting.portal]} portal, field ${deg(fieldDeg)} in ${setting.isInSaline ? "saline" : "air"}.`;
};

const lesionInWords = ({ setting }: ScopeModel): string => {
  if (setting.pattern === "none") return "No tear is drawn.";
  if (setting.pattern === "discoid") return "The lateral meniscus is drawn discoid.";
  if (setting.pattern === "hypermobile") return "The lateral meniscus is drawn whole, and pulled forwards.";
  if (setting.pattern === "fascicle") return "The fascicles that tie the lateral meniscus down beside the popliteus tendon are drawn torn.";
  return `A tear is drawn in the ${setting.pattern === "ramp" ? "medial" : setting.of} meniscus: ${words.patterns[setting.pattern]}.`;
};

/** Where the target lies in the picture, or why it is not seen. */
export const targetInWords = ({ setting, scale }: ScopeModel, { radius, clockDeg, distanceMm, isOpen }: Sighted): string => {
  const name = words.stations[setting.station];
  const hour = hourOf(setting.side === "left" ? 360 - clockDeg : clockDeg);
  const far = withUnit((distanceMm * scale).toFixed(0), "mm");
  if (radius > 1) return `The target, the ${name}, lies outside the field, towards ${hour}.`;
  if (!isOpen) return `The target, the ${name}, lies inside the field, but something stands in front of it.`;
  return radius < 0.15 ? `The target, the ${name}, is in the middle, ${far} from the lens.` : `The target, the ${name}, is in view towards ${hour}, ${percent(radius)} of the way to the rim, ${far} from the lens.`;
};

export interface Seen {
  readonly shares: readonly Share[];
  readonly sight: Sighted;
  /** Where a tear at one place of the rim lies in the picture; null without one. */
  readonly tear: Sighted | null;
  /** What a straight shaft or the lens would run into; null where the way is free. */
  readonly blocked: "lens" | "shaft" | null;
}

const BLOCKED = {
  lens: "The lens stands in tissue here: draw it back.",
  shaft: "A straight shaft to this place would run into bone or ligament: a hand could not hold it so.",
} as const;

const tearInWords = ({ setting }: ScopeModel, sight: Sighted): string => {
  if (sight.radius > 1) return "The tear lies outside the field.";
  if (!sight.isOpen) return "The tear lies inside the field, but something stands in front of it.";
  return `The tear is in view towards ${hourOf(setting.side === "left" ? 360 - sight.clockDeg : sight.clockDeg)}.`;
};

/** The target's place and what stands in the way, in words. */
export const sightInWords = (model: ScopeModel, { sight, tear, blocked }: Seen): string => [targetInWords(model, sight), tear === null ? "" : tearInWords(model, tear), blocked === null ? "" : BLOCKED[blocked]].filter((part) => part !== "").join(" ");

/** The whole picture in words, without the caution. */
export const seenInWords = (model: ScopeModel, seen: Seen): string =>
  [heldInWords(model), lesionInWords(model), model.setting.instrument === "probe" ? `The probe’s hook is ${withUnit(String(HOOK_MM), "mm")} long.` : "", sightInWords(model, seen), `In view, by share of the picture: ${sharesInWords(seen.shares)}.`].filter((part) => part !== "").join(" ");

/** The same with C8, as the alternative of the picture. */
export const scopeInWords = (model: ScopeModel, seen: Seen): string => `${seenInWords(model, seen)} ${cautionText("C8")}`;
