import { requireCount, requireNumber, requirePositive } from "../quantity/require.ts";

export interface ErrorOfScore {
  readonly semPoints: number;
  readonly patients: number;
}

/** Normal deviate of a two-sided 95 % interval, as the published formula prints it. */
const DEVIATE = 1.96;

/**
 * Smallest change of a score that is beyond its error, 1.96 × √2 × standard error, ÷ √n for the mean of a group (de Vet and
 * others 2006, Minimal changes in health status questionnaires, Health Qual Life Outcomes 4:54, 10.1186/1477-7525-4-54).
 * Whether such a change matters to the child is another question.
 *
 * @param semPoints - Standard error of measurement of one score, in points; greater than 0.
 * @param patients - Patients whose mean is compared: 1 for one child; whole number, at least 1.
 * @returns Change in points.
 * @throws {RangeError} If a value is outside its range.
 * @example detectableChange({ semPoints: 8.6, patients: 1 }) // => 23.8
 */
export const detectableChange = ({ semPoints, patients }: ErrorOfScore): number => {
  requirePositive({ semPoints });
  requireCount({ patients });
  requireNumber("patients", patients, { least: 1, leastIncluded: true });
  return (DEVIATE * Math.SQRT2 * semPoints) / Math.sqrt(patients);
};
