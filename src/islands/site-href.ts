/** The address of a page under the folder that the site is built for, as an island names it. */
export const siteHref = (path: string): string => `${import.meta.env.BASE_URL.replace(/\/$/, "")}${path}`;
