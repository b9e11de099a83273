import { z } from "zod";
import { UNITS } from "../engine/quantity/units.ts";
import { SAYS } from "../engine/question/response.ts";

const unit = z.string().refine((name) => Object.hasOwn(UNITS, name), "unknown unit");
const decimalText = z.string().regex(/^-?\d+(\.\d+)?$/);
const sourceMark = z.strictObject({ source: z.string().min(1), entry: z.string().regex(/^[a-z0-9-]+\.[a-z0-9-]+@\d+$/) });
const cautionId = z.string().regex(/^C\d{1,2}$/);

/** What every drawn question carries, whatever its kind. */
export const itemHead = {
  family: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  code: z.string().regex(/^\d\d[a-z]$/),
  module: z.string().regex(/^(M\d\d|DX)$/),
  version: z.number().int().nonnegative(),
  seed: z.string().regex(/^(\d{1,10}|[0-9a-f]{32})$/),
  language: z.string().min(2),
  unsafe: z.boolean(),
  objectives: z.array(z.string()).min(1),
  title: z.string().min(1),
  stem: z.array(z.string().min(1)).min(1),
  question: z.string().min(1),
  cautions: z.array(cautionId),
  sources: z.array(sourceMark),
  about: z.record(z.string(), z.string()),
  local: z.string().regex(/^[0-9a-f]{12}$/).optional(),
};

/** A given as the page shows it. */
export const shownGivenSchema = z.strictObject({
  key: z.string().min(1),
  label: z.string().min(1),
  unit,
  text: decimalText,
  from: z.enum(["study", "case", "local"]),
  entry: z.string().optional(),
});

const givens = z.array(shownGivenSchema);
const option = z.strictObject({ id: z.string().min(1), text: z.string().min(1) });
const options = z.array(option).min(1);
const region = z.strictObject({ id: z.string().min(1), xMm: decimalText, yMm: decimalText });
const lineGrid = z.strictObject({ least: decimalText, greatest: decimalText, step: decimalText });

const asks = z.array(z.strictObject({
  id: z.string().min(1),
  unit,
  roundTo: decimalText,
  rounding: z.enum(["nearest", "down", "up"]),
  safeSide: z.enum(["up", "down", "none"]),
  label: z.string().min(1),
})).min(1);
const says = z.record(z.enum(SAYS), z.string().min(1));
const step = z.strictObject({ id: z.string().min(1), question: z.string().min(1), asks, says });

/** One drawn question of any kind: plain JSON, without its answer. */
export const itemSchema = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("sum"),
    ...itemHead,
    givens: givens.min(1),
    asks,
    says,
  }),
  z.strictObject({ kind: z.literal("range"), ...itemHead, givens, unit, roundTo: decimalText }),
  z.strictObject({ kind: z.literal("mark"), ...itemHead, givens, targets: options, regions: z.array(region).min(2) }),
  z.strictObject({ kind: z.literal("line"), ...itemHead, givens, angle: lineGrid, depth: lineGrid }),
  z.strictObject({ kind: z.literal("order"), ...itemHead, givens, cards: options.min(2) }),
  z.strictObject({ kind: z.literal("tray"), ...itemHead, givens, things: options, nothing: z.string().min(1) }),
  z.strictObject({ kind: z.literal("name"), ...itemHead, givens, attributes: z.array(option.extend({ options })).min(1) }),
  z.strictObject({ kind: z.literal("count"), ...itemHead, givens, classes: options }),
  z.strictObject({ kind: z.literal("judge"), ...itemHead, givens, options, reasons: options }),
  z.strictObject({ kind: z.literal("chain"), ...itemHead, givens: givens.min(1), steps: z.array(step).min(2) }),
]);
