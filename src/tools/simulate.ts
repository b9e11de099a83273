import { parseArgs } from "node:util";
import { SETS } from "./simulate/assumptions.ts";
import { endText, headText, setText } from "./simulate/report.ts";
import { runSet } from "./simulate/run-set.ts";

/** Sends simulated learners through the rules of practice and return, and prints what follows from three sets of assumptions. */

const LEARNERS = 1000;
const FEWEST = 2;
const MOST = 100_000;
const SEED = 20261125;

const asked = (): number | string => {
  const { values } = parseArgs({ options: { learners: { type: "string" } } });
  const learners = Number(values.learners ?? LEARNERS);
  const isUsable = Number.isInteger(learners) && learners >= FEWEST && learners <= MOST;
  return isUsable ? learners : `--learners must be a whole number from ${FEWEST} to ${MOST}, got ${values.learners}`;
};

const main = (): void => {
  const learners = asked();
  if (typeof learners === "string") {
    console.error(learners);
    process.exitCode = 1;
    return;
  }
  console.log(`${headText(learners, SEED)}\n`);
  for (const set of SETS) console.log(`${setText(runSet(set, { learners, seed: SEED }))}\n`);
  console.log(endText());
};

main();
