/** The address of a page of this site under the folder that the site is built for. */
export const href = (path: string): string => `${import.meta.env.BASE_URL.replace(/\/$/, "")}${path}`;
