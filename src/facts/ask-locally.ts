import topics from "../../content/ask-locally.json" with { type: "json" };

/** Questions about one matter that every hospital settles itself. */
export interface LocalTopic {
  readonly topic: string;
  readonly questions: readonly string[];
}

/** What a reader should settle at home, by topic. */
export const ASK_LOCALLY: readonly LocalTopic[] = topics;
