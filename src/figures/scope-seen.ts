import type { Glance, Tissue } from "./scope-still.ts";

/** What a still shows, told by shape, colour and place alone: the names are what the question asks for. */

const LOOKS: Readonly<Partial<Record<Tissue, string>>> = {
  femur: "a smooth white surface that bulges into the picture", tibia: "a smooth white surface, nearly flat", meniscus: "a tan band, thin at its free edge and thick away from it",
  "anterior-cruciate": "a broad flat cord of fibres that lies in front of what is behind it", "posterior-cruciate": "a broad flat cord of fibres that climbs from far behind", popliteus: "a round shining cord that dips behind the band",
  wall: "a red soft wall", fat: "yellow lobules", strip: "a tan strip apart from the band", probe: "a steel rod",
};
const LEAST_SHARE = 0.015;
const MIDDLE = 0.28;
const HOUR_DEG = 30;

const CORDS: ReadonlySet<Tissue> = new Set<Tissue>(["anterior-cruciate", "posterior-cruciate", "popliteus"]);

interface Spot {
  readonly u: number;
  readonly v: number;
}

interface Part extends Spot {
  readonly label: Tissue;
  readonly share: number;
}

const farthest = (from: Spot, among: readonly Spot[]): Spot =>
  among.reduce((best, one) => (Math.hypot(one.u - from.u, one.v - from.v) > Math.hypot(best.u - from.u, best.v - from.v) ? one : best), from);

const partsOf = (glances: readonly Glance[]): readonly Part[] => {
  const sums = new Map<Tissue, { count: number; u: number; v: number }>();
  for (const { label, u, v } of glances) {
    const sum = sums.get(label) ?? { count: 0, u: 0, v: 0 };
    sums.set(label, { count: sum.count + 1, u: sum.u + u, v: sum.v + v });
  }
  return [...sums].map(([label, { count, u, v }]) => ({ label, share: count / glances.length, u: u / count, v: v / count }))
    .filter(({ share, label }) => share >= LEAST_SHARE && label in LOOKS).toSorted((first, second) => second.share - first.share);
};

export interface Turned {
  readonly isMirrored: boolean;
  /** Where up in the patient lies in the picture, as an hour: 12, 3, 6 or 9. */
  readonly upHour: number;
}

/** A place as an hour of the picture that is shown, after mirror and turn. */
export const shownHour = ({ u, v }: Spot, { isMirrored, upHour }: Turned): number => {
  const hour = (Math.atan2(isMirrored ? -u : u, v) * 180) / Math.PI / HOUR_DEG + upHour;
  return ((Math.round(hour) + 11) % 12 + 12) % 12 + 1;
};

const percent = (share: number): string => `${Math.max(1, Math.round(100 * share))} %`;

/** Where a part lies; of a cord, from where to where it runs. */
const placeOf = (part: Part, glances: readonly Glance[], turned: Turned): string => {
  if (CORDS.has(part.label)) {
    const own = glances.filter(({ label }) => label === part.label);
    const end = farthest(part, own);
    const hours = [end, farthest(end, own)].map((spot) => shownHour(spot, turned)).toSorted((first, second) => first - second);
    return `running between ${hours[0] ?? ""} and ${hours[1] ?? ""} o’clock`;
  }
  return Math.hypot(part.u, part.v) < MIDDLE ? "in the middle" : `towards ${shownHour(part, turned)} o’clock`;
};

/** The parts of a still by look, place and share, the largest first. */
export const seenByLook = (glances: readonly Glance[], turned: Turned): string =>
  partsOf(glances).map((part) => `${LOOKS[part.label] ?? ""}, ${placeOf(part, glances, turned)}, ${percent(part.share)}`).join("; ");
