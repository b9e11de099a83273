import { canonicalJson } from "../record/canonical.ts";
import { nameUuid, URL_NAMESPACE } from "../record/name-uuid.ts";

/** Name under which another system knows a learner of a list. It tells nothing; whoever holds the table of codes can find the person. */
export const accountOf = (list: string, learner: string): string => nameUuid(URL_NAMESPACE, canonicalJson(["learner", list, learner]));
