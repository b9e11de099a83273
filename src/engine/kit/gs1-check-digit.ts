/**
 * Check digit of a GS1 key (GTIN-8, -12, -13, -14, SSCC and others): weights 3, 1, 3, 1 … from the right, and what is
 * missing to the next ten (GS1 General Specifications, section "Check digit calculations").
 *
 * @param text - The digits of the key without its check digit, at least one; nothing but 0 to 9.
 * @returns Whole number from 0 to 9.
 * @throws {RangeError} If the text is empty or holds anything but digits.
 * @example gs1CheckDigit("730001100001") // => 7
 */
export const gs1CheckDigit = (text: string): number => {
  if (typeof text !== "string" || !/^[0-9]+$/.test(text)) {
    throw new RangeError(`text must be one or more digits, got ${JSON.stringify(text)}`);
  }
  const weighted = [...text].reverse().map((digit, index) => Number(digit) * (index % 2 === 0 ? 3 : 1));
  const sum = weighted.reduce((total, value) => total + value, 0);
  return (10 - (sum % 10)) % 10;
};
