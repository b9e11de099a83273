import Answer from "./Answer.astro";
import Ask from "./Ask.astro";
import Caution from "./Caution.astro";
import Figure from "./Figure.astro";
import Num from "./Num.astro";
import Ours from "./Ours.astro";
import Pause from "./Pause.astro";
import Term from "./Term.astro";

/** Every name that an author may use in a module. */
export const MDX_TAGS = { Ask, Caution, Figure, Num, Ours, Pause, Term };

/** The same names for the page of answers: a question is replaced by its answer, the rest is left out by the page. */
export const ANSWER_TAGS = { ...MDX_TAGS, Ask: Answer };
