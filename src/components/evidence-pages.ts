/** A page of the evidence pack: what a visitor asks, and where the answer is printed. */
export interface EvidencePage {
  readonly path: string;
  readonly title: string;
  readonly asks: string;
}

export const EVIDENCE: readonly EvidencePage[] = [
  { path: "/evidence/objectives/", title: "Objectives and sources", asks: "What is taught, what asks it, on which works does it rest, and who has read it?" },
  { path: "/evidence/standard/", title: "How the standard is set", asks: "Who decides what is enough, and how sure is a result?" },
  { path: "/evidence/time/", title: "Contact time", asks: "How many minutes, and how were they reckoned?" },
  { path: "/corrections/", title: "Corrections", asks: "What was wrong, and were results touched?" },
  { path: "/evidence/completion/", title: "Completion and results", asks: "Who worked through it, when, and what does it show?" },
  { path: "/evidence/privacy/", title: "Privacy notice", asks: "What is held about a learner, by whom, for how long?" },
  { path: "/evidence/conflicts/", title: "Statement of interests", asks: "Who has something to gain?" },
  { path: "/evidence/evaluation/", title: "Evaluation", asks: "What do those say who used it?" },
];
