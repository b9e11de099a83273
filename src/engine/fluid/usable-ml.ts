import { compareOnGrid, sumOnGrid } from "../quantity/grid.ts";
import { requireNotNegative, requirePositive } from "../quantity/require.ts";

/** A bag that is changed when it is down to its reserve, so that no air runs into the line. */
export interface BagWithReserve {
  readonly bagMl: number;
  readonly reserveMl: number;
}

/** What a bag gives before it is changed, in mL; refuses a reserve that leaves nothing. */
export const usableMl = ({ bagMl, reserveMl }: BagWithReserve): number => {
  requirePositive({ bagMl });
  requireNotNegative({ reserveMl });
  if (compareOnGrid(reserveMl, bagMl) >= 0) {
    throw new RangeError(`reserveMl must be less than bagMl (${bagMl}), got ${reserveMl}`);
  }
  return sumOnGrid(bagMl, -reserveMl);
};
