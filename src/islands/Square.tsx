import { useMemo } from "react";
import { encode } from "uqr";

/** The code as black and white squares with the quiet border that readers ask for (ISO/IEC 18004: four modules). */
export const Square = ({ text, name }: { readonly text: string; readonly name: string }) => {
  const { data, size } = useMemo(() => encode(text, { ecc: "M", border: 4 }), [text]);
  const path = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : []))).join("");
  return <svg className="square" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={name}><path className="square-ground" d={`M0 0H${size}V${size}H0Z`} /><path className="square-ink" d={path} /></svg>;
};
