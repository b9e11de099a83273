import { requireNumber, requirePositive } from "../quantity/require.ts";

export interface Dilution {
  readonly stockMgPerMl: number;
  readonly wantedMgPerMl: number;
  readonly madeUpToMl: number;
}

export interface DilutionParts {
  readonly stockMl: number;
  readonly diluentMl: number;
}

/**
 * What to draw up of a stock solution, and of the diluent, so that both together make a wanted strength and volume: the
 * mass stays, stock strength × stock volume = wanted strength × volume made up to.
 *
 * @param stockMgPerMl - Strength of the stock, in mg/mL; greater than 0.
 * @param wantedMgPerMl - Strength wanted, in mg/mL; greater than 0, at most that of the stock (included).
 * @param madeUpToMl - Volume of the mixture, in mL; greater than 0.
 * @returns Volumes of stock and diluent in mL; together the volume made up to.
 * @throws {RangeError} If a value is outside its range: no diluent makes a solution stronger.
 * @example dilutionMl({ stockMgPerMl: 5, wantedMgPerMl: 1.25, madeUpToMl: 20 }) // => { stockMl: 5, diluentMl: 15 }
 */
export const dilutionMl = ({ stockMgPerMl, wantedMgPerMl, madeUpToMl }: Dilution): DilutionParts => {
  requirePositive({ stockMgPerMl, wantedMgPerMl, madeUpToMl });
  requireNumber("wantedMgPerMl", wantedMgPerMl, { least: 0, greatest: stockMgPerMl, greatestIncluded: true });
  const stockMl = (wantedMgPerMl / stockMgPerMl) * madeUpToMl;
  return { stockMl, diluentMl: madeUpToMl - stockMl };
};
