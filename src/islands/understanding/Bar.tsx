const WIDE = 280;
const HIGH = 20;
const TICK = 15;

interface BarProps {
  readonly count: number;
  readonly all: number;
  readonly unsafe: boolean;
  readonly text: string;
}

/** So many ticks that each still stands by itself. */
const stepFor = (all: number): number => [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000].find((step) => all / step <= 40) ?? all;

/** A count on a rule with a tick for each learner, or for each few where they are many; hatched where the slip did harm. */
export const Bar = ({ count, all, unsafe, text }: BarProps) => {
  const x = (value: number): number => 1 + (value / Math.max(1, all)) * (WIDE - 2);
  const step = stepFor(all);
  const ticks = Array.from({ length: Math.floor(all / step) + 1 }, (_, index) => `M${x(index * step).toFixed(1)} 20V16`).join("");
  return (
    <svg className={unsafe ? "slip-bar unsafe" : "slip-bar"} viewBox={`0 0 ${WIDE} ${HIGH}`} width={WIDE} height={HIGH} role="img" aria-label={text}>
      <path className="ticks" d={`M1 ${HIGH - 0.5}H${WIDE - 1}${ticks}`} />
      <rect x="1" y="1" width={(x(count) - 1).toFixed(1)} height={TICK - 2} className="bar" fill={unsafe ? "url(#p-forbid)" : undefined} />
    </svg>
  );
};
