/** Rows of right and wrong answers, one word per person: "101 110". */
export const marks = (rows: string): number[][] => rows.split(" ").map((row) => [...row].map(Number));

/** Wuensch, East Carolina University, KR20.txt: ten students, ten items; printed total variance 5.84 and Σpq 2.18. */
export const WUENSCH = marks(
  "1111110110 1011011101 1111011001 0010001000 0000010010 1110111111 1101110111 1111111101 0101111101 1101101110",
);

/** Twelve persons, eleven items; .738 printed in the test file of a research library after the real-statistics page on KR-20. */
export const REAL_STATISTICS = marks(
  "11111111111 11111111010 10111111100 11101101100 11111000100 01101111000 11110010000 11111000000 01011000010 10010100000 11100000000 10010000000",
);

/** Bock and Lieberman 1970, Psychometrika 35:179–197: LSAT, section 6, a thousand persons as patterns with their counts (counts from memory). */
const LSAT_PATTERNS =
  "00000:3 00001:6 00010:2 00011:11 00100:1 00101:1 00110:3 00111:4 01000:1 01001:8 01011:16 01101:3 01110:2 01111:15 " +
  "10000:10 10001:29 10010:14 10011:81 10100:3 10101:28 10110:15 10111:80 11000:16 11001:56 11010:21 11011:173 11100:11 " +
  "11101:61 11110:28 11111:298";
export const LSAT = LSAT_PATTERNS.split(" ").flatMap((entry) => {
  const [pattern = "", count] = entry.split(":");
  return Array.from({ length: Number(count) }, () => [...pattern].map(Number));
});
