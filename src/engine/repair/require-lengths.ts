import { requireNotNegative, requireNumber, requireOnePositive, requirePositive } from "../quantity/require.ts";

/** A thousand kilometres: beyond it whole millionths of a millimetre are no longer exact in a double. */
const GREATEST_LENGTH_MM = 1_000_000_000;

type Named = Readonly<Record<string, unknown>>;

const EXACT = { greatest: GREATEST_LENGTH_MM, greatestIncluded: true };

const requireExact = (values: Named): void => {
  for (const name of Object.keys(values)) requireNumber(name, values[name], EXACT);
};

/** Checks one length that must be greater than 0 and exact on the grid. */
export const requireLength = (name: string, value: unknown): void => {
  requireOnePositive(name, value);
  requireNumber(name, value, EXACT);
};

/** Checks lengths that must be greater than 0 and exact on the grid. */
export const requireLengths = (values: Named): void => {
  requirePositive(values);
  requireExact(values);
};

/** Checks lengths that may be 0. */
export const requireLengthsOrZero = (values: Named): void => {
  requireNotNegative(values);
  requireExact(values);
};
