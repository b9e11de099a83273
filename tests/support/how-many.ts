/** A number of repetitions: the whole of it in `npm test`, a few in `npm run quick`. */
export const howMany = (whole: number, quick: number): number => (process.env["QUICK"] ? quick : whole);
