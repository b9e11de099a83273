/**
 * The whole address of a path of this site, for readers outside of it; null where nobody has said where the site lives.
 * Names under "example" belong to nobody (RFC 2606, section 2), so the name that stands in for a site counts as none.
 */
export const publicAddress = (site: URL | undefined, path: string): string | null =>
  site === undefined || /(^|\.)example$/.test(site.hostname) ? null : new URL(path, site).href;
