/** Number of letters to add, take away, change or swap to turn one word into the other (Damerau's distance, restricted). */
const lettersApart = (first: string, second: string): number => {
  const rows: number[][] = [Array.from({ length: second.length + 1 }, (_, column) => column)];
  const at = (row: number, column: number): number => rows[row]?.[column] ?? 0;
  for (let row = 1; row <= first.length; row += 1) {
    const line = [row];
    rows.push(line);
    for (let column = 1; column <= second.length; column += 1) {
      const same = first[row - 1] === second[column - 1];
      const swapped = row > 1 && column > 1 && first[row - 1] === second[column - 2] && first[row - 2] === second[column - 1];
      const change = at(row - 1, column - 1) + (same ? 0 : 1);
      const swap = swapped ? at(row - 2, column - 2) + 1 : Infinity;
      line.push(Math.min(at(row - 1, column) + 1, (line[column - 1] ?? 0) + 1, change, swap));
    }
  }
  return at(first.length, second.length);
};

/** The known name nearest to what was written, or null where none is near enough to be meant. */
export const nearest = (written: string, names: Iterable<string>): string | null => {
  const farthest = Math.max(2, Math.floor(written.length * 0.4));
  let best: string | null = null;
  let least = farthest + 1;
  for (const name of names) {
    if (Math.abs(name.length - written.length) >= least) continue;
    const apart = lettersApart(written.toLowerCase(), name.toLowerCase());
    if (apart < least) {
      least = apart;
      best = name;
    }
  }
  return best;
};

const MOST_ALIKE = 4;
const SHORTEST_WORD = 4;

/** Names that share a word with what was written, for where none is near enough to be meant. */
export const alike = (written: string, names: Iterable<string>): readonly string[] => {
  const words = written.toLowerCase().split(/[^a-z0-9]+/).filter((word) => word.length >= SHORTEST_WORD);
  return [...names].filter((name) => !name.includes("@") && words.some((word) => name.toLowerCase().includes(word))).slice(0, MOST_ALIKE);
};

/** "a, b or c", each in quotes. */
export const anyOf = (names: readonly string[]): string => {
  const quoted = names.map((name) => `"${name}"`);
  return quoted.length < 2 ? (quoted[0] ?? "nothing") : `${quoted.slice(0, -1).join(", ")} or ${quoted.at(-1)}`;
};
