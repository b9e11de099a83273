/** Fetches the file of a family when a question of it is first worked on, by the family's id. The file alone is named, so that the list stays light. */
export type Loaders = Readonly<Record<string, () => Promise<object>>>;
