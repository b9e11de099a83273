import { SCENE, SURFACE } from "../engine/knee/scope/scene.ts";
import type { Program } from "../engine/knee/scope/program.ts";
import type { Field } from "../engine/knee/scope/field.ts";
import { cast } from "../engine/knee/scope/cast.ts";
import { rayAt } from "../engine/knee/scope/camera.ts";
import { givenRegisters, uniformRows } from "./scope-print.ts";
import type { ScopeModel } from "./scope-setting.ts";

/** What the picture's shader is given, by name; rows of four numbers are filled up with nought. */
export interface ScopeUniforms {
  readonly F: Float32Array;
  readonly G: Float32Array;
  readonly tip: readonly number[];
  readonly view: readonly number[];
  readonly halfField: number;
  readonly light: number;
  readonly ticks: number;
  readonly mirror: 1 | -1;
}

const rows = (program: Program, field: Field): Float32Array => {
  const list = new Float32Array(4 * uniformRows(program));
  for (const [index, register] of givenRegisters(program).entries()) list[index] = field.fixed(register);
  return list;
};

/** Share of white that the middle of a picture is to have, before the tone of the camera. */
const AIM = 1.1;
const SOFT_MM2 = 110;
const LOOKS = 9;
const NARROW = 0.45;

/** The camera's exposure: from how far the middle of the picture is, so that it is neither burnt out nor black. */
export const exposureOf = ({ field, camera, fieldDeg }: ScopeModel): number => {
  let sum = 0;
  let weight = 0;
  for (let index = 0; index < LOOKS * LOOKS; index += 1) {
    const [u, v] = [(2 * (index % LOOKS)) / (LOOKS - 1) - 1, (2 * Math.floor(index / LOOKS)) / (LOOKS - 1) - 1];
    if (Math.hypot(u, v) > 1) continue;
    const { distanceMm } = cast(field, camera.tip, rayAt(camera, fieldDeg, [u, v]));
    const share = Math.exp(-(u * u + v * v) / NARROW);
    sum += share / (distanceMm * distanceMm + SOFT_MM2);
    weight += share;
  }
  return (AIM * weight) / sum;
};

/** The shader's numbers for a model. */
export const uniformsOf = (model: ScopeModel): ScopeUniforms => {
  const { right, up, ahead, tip } = model.camera;
  return {
    F: rows(SCENE, model.field), G: rows(SURFACE, model.surface),
    tip, view: [...right, ...up, ...ahead],
    halfField: (model.fieldDeg * Math.PI) / 360,
    light: exposureOf(model),
    ticks: model.needleMm / model.tickMm,
    mirror: model.setting.side === "left" ? -1 : 1,
  };
};
