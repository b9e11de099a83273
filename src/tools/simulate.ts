import { SETS } from "./simulate/assumptions.ts";
import { endText, headText, setText } from "./simulate/report.ts";
import { runSet } from "./simulate/run-set.ts";
import { type Tool, wholeNumber, wordsOf } from "./words.ts";

/** Sends simulated learners through the rules of practice and return, and prints what follows from three sets of assumptions. */

const LEARNERS = 1000;
const FEWEST = 2;
const MOST = 100_000;
const SEED = 20261125;

const TOOL: Tool = {
  name: "simulate",
  does: "Sends made-up learners through the rules of practice and return, under stated assumptions, and prints how many questions each order needs.",
  flags: { learners: { says: `how many go through each set of assumptions, ${FEWEST} to ${MOST}`, value: String(LEARNERS) } },
};

const main = (): void => {
  const learners = wholeNumber(wordsOf(TOOL), "learners", { least: FEWEST, most: MOST, otherwise: LEARNERS });
  console.log(`${headText(learners, SEED)}\n`);
  for (const set of SETS) console.log(`${setText(runSet(set, { learners, seed: SEED }))}\n`);
  console.log(endText());
};

main();
