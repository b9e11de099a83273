/** Medians of several rounds, on this machine, with nothing else asked of it. */

const ROUNDS = 5;
const LEAST_MS = 20;

/** Times a second of one piece of work: median of rounds that each last at least a while. */
export const perSecond = (work: (turn: number) => unknown): number => {
  const rates: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const start = process.hrtime.bigint();
    let turns = 0;
    let elapsed = 0;
    while (elapsed < LEAST_MS) {
      for (let inner = 0; inner < 50; inner += 1) work(turns + inner);
      turns += 50;
      elapsed = Number(process.hrtime.bigint() - start) / 1e6;
    }
    rates.push((turns / elapsed) * 1000);
  }
  return rates.toSorted((first, second) => first - second)[Math.floor(ROUNDS / 2)] ?? 0;
};

/** One line of the bench. */
export const shown = (name: string, rate: number): void => console.log(`${name.padEnd(44)} ${Math.round(rate).toLocaleString("en-GB").padStart(12)} a second`);
