import json from "../../content/ledger/scope-model.json" with { type: "json" };
import { SHAPES, type Shapes } from "../engine/knee/scope/scene-numbers.ts";
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "scope-model". */
export const scopeModel = (pin: string): Pinned => pinnedIn(json, pin);

/** A single assumed number of the view through the scope, by the first part of its ledger key. */
export const scopeNumber = (name: string): number => {
  const { number, entry } = scopeModel(`${name}.scope@1`);
  if (number.value === undefined) throw new RangeError(`pin must hold a single value, got ${entry}`);
  return number.value;
};

/** `condyleX_M` in the engine is `condyle-x-medial` in the ledger. */
const ledgerName = (name: string): string =>
  name.replace(/_?M$/, "-medial").replace(/_?L$/, "-lateral").replace(/FX$|FY$|FZ$/, (end) => `-${end.toLowerCase()}`).replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** The shapes of the scene, in mm of the knee of 14–16 years. */
export const scopeShapes = (): Shapes => Object.fromEntries(SHAPES.map((name) => [name, scopeNumber(ledgerName(name))])) as Shapes;
