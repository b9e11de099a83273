/** Outlines of what is in view, from a grid of rays: a calm drawing, not a photograph. */

/** A ray of the grid with what is to be told apart: its place in the picture, −1 to 1, right and up. */
export interface Marked<L extends string> {
  readonly u: number;
  readonly v: number;
  readonly label: L;
}

export interface Region<L extends string> {
  readonly label: L;
  /** Closed outlines in the picture's own measure: −1 to 1, right and up. */
  readonly outlines: readonly (readonly Corner[])[];
  /** A place well inside the region, for its number. */
  readonly inside: Corner;
  readonly share: number;
}

export type Corner = readonly [number, number];

const CALM = 3;
/** Cells beyond the grid on every side, so that regions can reach past the rim. */
const MARGIN = 4;
const LEAST_CORNERS = 6;

interface Grid<L extends string> {
  readonly across: number;
  readonly at: (column: number, row: number) => L | null;
}

/** The grid with its rim carried outwards, so that regions reach beyond the round edge and are cut by it. */
const gridOf = <L extends string>(samples: readonly Marked<L>[], across: number): Grid<L> => {
  const cells = new Map<number, L>();
  const indexOf = (u: number): number => Math.round(((u + 1) * across) / 2 - 0.5);
  const keyOf = (column: number, row: number): number => (row + MARGIN) * (across + 2 * MARGIN) + column + MARGIN;
  for (const { u, v, label } of samples) cells.set(keyOf(indexOf(u), indexOf(-v)), label);
  const inside = (index: number): number => ((index + 0.5) * 2) / across - 1;
  const at = (column: number, row: number): L | null => {
    const own = cells.get(keyOf(column, row));
    if (own !== undefined) return own;
    const [u, v] = [inside(column), inside(row)];
    const far = Math.hypot(u, v);
    if (far > 1 + 5 / across) return null;
    const back = 1 - 1.6 / across;
    return cells.get(keyOf(indexOf((u / far) * back), indexOf((v / far) * back))) ?? null;
  };
  return { across, at };
};

type Edge = readonly [number, number, number, number];

/** The four sides of a cell: the step to the neighbour, and the edge's ends, so that the cell lies on its left hand. */
const SIDES = [
  { column: 0, row: -1, edge: [1, 0, 0, 0] },
  { column: -1, row: 0, edge: [0, 0, 0, 1] },
  { column: 0, row: 1, edge: [0, 1, 1, 1] },
  { column: 1, row: 0, edge: [1, 1, 1, 0] },
] as const;

/** Edges round the cells of a label, each with the label on its left hand. */
const edgesOf = <L extends string>({ across, at }: Grid<L>, label: L): readonly Edge[] => {
  const wide = across + 2 * MARGIN - 2;
  const cells = Array.from({ length: wide * wide }, (_, index) => [(index % wide) - MARGIN + 1, Math.floor(index / wide) - MARGIN + 1] as const);
  return cells.filter(([column, row]) => at(column, row) === label).flatMap(([column, row]) =>
    SIDES.filter((side) => at(column + side.column, row + side.row) !== label)
      .map(({ edge: [fromX, fromY, toX, toY] }): Edge => [column + fromX, row + fromY, column + toX, row + toY]));
};

/** Edges joined into closed lines, as their middles. */
const joined = (edges: readonly Edge[]): readonly (readonly Corner[])[] => {
  const from = new Map<string, Edge[]>();
  for (const edge of edges) {
    const key = `${edge[0]} ${edge[1]}`;
    from.set(key, [...(from.get(key) ?? []), edge]);
  }
  const lines: (readonly Corner[])[] = [];
  for (const list of from.values()) {
    for (let edge = list.pop(); edge !== undefined; edge = list.pop()) {
      const line: Corner[] = [];
      for (let next: Edge | undefined = edge; next !== undefined; next = from.get(`${next[2]} ${next[3]}`)?.pop()) line.push([(next[0] + next[2]) / 2, (next[1] + next[3]) / 2]);
      lines.push(line);
    }
  }
  return lines;
};

/** A closed line with its steps smoothed away, and every second corner left out. */
const calmed = (line: readonly Corner[]): readonly Corner[] => {
  let corners = line;
  for (let time = 0; time < CALM; time += 1) {
    const before = corners;
    corners = before.map(([x, y], index) => {
      const [px, py] = before[(index + before.length - 1) % before.length] ?? [x, y];
      const [nx, ny] = before[(index + 1) % before.length] ?? [x, y];
      return [(px + 2 * x + nx) / 4, (py + 2 * y + ny) / 4] as const;
    });
  }
  return corners.filter((_, index) => index % 2 === 0);
};

/** The sample of a label that lies farthest from every other label and from the rim. */
const insideOf = <L extends string>(samples: readonly Marked<L>[], label: L): Corner => {
  const others = samples.filter((one) => one.label !== label);
  let best: Corner = [0, 0];
  let bestRoom = -1;
  for (const { u, v } of samples.filter((one) => one.label === label)) {
    let room = 1 - Math.hypot(u, v);
    for (const other of others) room = Math.min(room, Math.hypot(u - other.u, v - other.v));
    if (room > bestRoom) [best, bestRoom] = [[u, v], room];
  }
  return best;
};

const TINY = 0.000001;

/** From a corner to the straight line through two others; to the first of them where both are one. */
const offLine = ([x, y]: Corner, [ax, ay]: Corner, [bx, by]: Corner): number => {
  const long = Math.hypot(bx - ax, by - ay);
  return long < TINY ? Math.hypot(x - ax, y - ay) : Math.abs((bx - ax) * (ay - y) - (ax - x) * (by - ay)) / long;
};

/** A line without the corners that lie nearer than this to the straight way between their neighbours (Douglas and Peucker, 1973). */
export const thinned = (line: readonly Corner[], nearer: number): readonly Corner[] => {
  const [first, last] = [line[0], line.at(-1)];
  if (first === undefined || last === undefined || line.length < 3) return line;
  let [at, most] = [0, 0];
  for (const [index, corner] of line.entries()) {
    const off = offLine(corner, first, last);
    if (off > most) [at, most] = [index, off];
  }
  return most < nearer ? [first, last] : [...thinned(line.slice(0, at + 1), nearer).slice(0, -1), ...thinned(line.slice(at), nearer)];
};

/** The outlines of what a grid of rays marked, by mark. */
export const outlinesOf = <L extends string>(samples: readonly Marked<L>[], across: number): ((label: L) => Region<L>["outlines"]) => {
  const grid = gridOf(samples, across);
  return (label) => joined(edgesOf(grid, label)).filter((line) => line.length >= LEAST_CORNERS)
    .map((line) => calmed(line).map(([x, y]) => [(x * 2) / across - 1, 1 - (y * 2) / across] as const));
};

/** A region without the place for its number, which is dear to find. */
export type Outlined<L extends string> = Omit<Region<L>, "inside">;

/** The outlines of a picture's regions, the largest first; those below the least share are left out. */
export const outlinedIn = <L extends string>(samples: readonly Marked<L>[], across: number, leastShare: number): readonly Outlined<L>[] => {
  const outlines = outlinesOf(samples, across);
  const counts = new Map<L, number>();
  for (const { label } of samples) counts.set(label, (counts.get(label) ?? 0) + 1);
  return [...counts]
    .map(([label, count]) => ({ label, share: count / samples.length }))
    .filter(({ share }) => share >= leastShare)
    .toSorted((first, second) => second.share - first.share)
    .map(({ label, share }) => ({ label, share, outlines: outlines(label) }));
};

/** The regions of a picture with a place for a number in each. */
export const regionsOf = <L extends string>(samples: readonly Marked<L>[], across: number, leastShare: number): readonly Region<L>[] =>
  outlinedIn(samples, across, leastShare).map((one) => ({ ...one, inside: insideOf(samples, one.label) }));
