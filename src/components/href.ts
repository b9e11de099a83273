/** The address of a page of this site under the folder that the site is built for. */
export const href = (path: string): string => `${import.meta.env.BASE_URL.replace(/\/$/, "")}${path}`;

/** The address of one entry of the number ledger. */
export const ledgerHref = (topic: string, key: string): string => `${href(`/numbers/${topic}/`)}#${key}`;

/** The address of one cited work. */
export const sourceHref = (id: string): string => `${href("/sources/")}#${id}`;
