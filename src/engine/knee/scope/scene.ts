import { X, Y, Z } from "./formula.ts";
import { femur, femurBound, tibia } from "./bones.ts";
import { meniscalPlace, menisci, menisciBound, strip, stripBound } from "./menisci.ts";
import { type Program, programOf, type Solid } from "./program.ts";
import { anteriorCruciate, anteriorCruciateBound, fatBound, fatPad, needle, needleBound, needleEnds, popliteus, posteriorCruciate, posteriorCruciateBound, probe, probeBound, stitches, stitchesBound, wall } from "./soft.ts";
import { shareAlong } from "./shapes.ts";

/** The solids of the scene by number; the shader colours them by these. */
export const SOLIDS = ["wall", "tibia", "femur", "anterior-cruciate", "posterior-cruciate", "popliteus", "fat", "meniscus", "strip", "probe", "needle", "stitch"] as const;
export type SolidName = (typeof SOLIDS)[number];

const solid = (name: SolidName, distance: Solid["distance"], bound: Solid["bound"] = null): Solid => ({ id: SOLIDS.indexOf(name), distance, bound });

/** The distance to everything that a scope may see, and to which of them. */
export const SCENE: Program = programOf([
  solid("wall", wall()),
  solid("tibia", tibia()),
  solid("femur", femur(), femurBound()),
  solid("meniscus", menisci(), menisciBound()),
  solid("anterior-cruciate", anteriorCruciate(), anteriorCruciateBound()),
  solid("posterior-cruciate", posteriorCruciate(), posteriorCruciateBound()),
  solid("popliteus", popliteus()),
  solid("fat", fatPad(), fatBound()),
  solid("strip", strip(), stripBound()),
  solid("probe", probe(), probeBound()),
  solid("needle", needle(), needleBound()),
  solid("stitch", stitches(), stitchesBound()),
]);

const place = meniscalPlace();

/** What the look of a surface hangs on: place in the meniscus (share, angle, mm from the rim), and share of the way along the needle. */
export const SURFACE: Program = programOf([], [place.share, place.angle, place.inward, shareAlong({ x: X, y: Y, z: Z }, ...needleEnds())]);
