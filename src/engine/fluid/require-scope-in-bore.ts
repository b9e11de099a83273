import { requireNotNegative, requirePositive } from "../quantity/require.ts";

/** A scope in the bore around it; a scope of 0 is the open bore. */
export interface ScopeInBore {
  readonly scopeMm: number;
  readonly boreMm: number;
}

/** Checks that a bore has some width and that the scope leaves a gap in it. */
export const requireScopeInBore = ({ scopeMm, boreMm }: ScopeInBore): void => {
  requirePositive({ boreMm });
  requireNotNegative({ scopeMm });
  if (scopeMm >= boreMm) throw new RangeError(`scopeMm must be less than boreMm (${boreMm}), got ${scopeMm}`);
};
