import { requireNotNegative, requireNumber, requirePositive } from "../quantity/require.ts";

/** A thousand kilometres: beyond it whole millionths of a millimetre are no longer exact in a double. */
const GREATEST_LENGTH_MM = 1_000_000_000;

type Named = Readonly<Record<string, unknown>>;

const requireExact = (values: Named): void => {
  for (const [name, value] of Object.entries(values)) {
    requireNumber(name, value, { greatest: GREATEST_LENGTH_MM, greatestIncluded: true });
  }
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
