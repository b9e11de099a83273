/** A seed for a question that nobody has asked yet: the only place where chance enters from outside. */
export const newSeed = (): string => {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
};
