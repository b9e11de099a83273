const ANSWER = /<!--answer\|([^>]*?)-->([\s\S]*?)<!--\/answer-->/g;

/** Cautions that stand in a figure or a verdict, and so never on a list of answers. */
const ELSEWHERE: readonly string[] = ["C8", "C10"];

const numberOf = (id: string): number => Number(id.slice(1));

/** Takes the answers out of a module's page, leaves the prose behind, and gathers the cautions of the questions beside those of the page. */
export const answersOf = (html: string, ofPage: readonly string[]): { readonly rows: readonly string[]; readonly cautions: readonly string[] } => {
  const found = [...html.matchAll(ANSWER)];
  const ofQuestions = found.flatMap(([, cautions = ""]) => cautions.split(" ")).filter((id) => id !== "" && !ELSEWHERE.includes(id));
  const cautions = [...new Set([...ofPage, ...ofQuestions])].sort((first, second) => numberOf(first) - numberOf(second));
  return { rows: found.map(([, , row = ""]) => row.trim()), cautions };
};
