const MOST = 50_000;

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;").replaceAll("'", "&apos;");

export interface BuiltPage {
  /** Path in the built folder: `modules/index.html`. */
  readonly name: string;
  readonly html: string;
}

/**
 * The site map (sitemaps.org, protocol 0.9): every page that search reads too, so no page of answers. Null where nobody has
 * said where the site lives, since the protocol asks for whole addresses; names under "example" belong to nobody (RFC 2606).
 */
export const siteMap = (address: string, pages: readonly BuiltPage[]): string | null => {
  const home = new URL(address.endsWith("/") ? address : `${address}/`);
  if (/(^|\.)example$/.test(home.hostname)) return null;
  const shown = pages.filter(({ name, html }) => name !== "404.html" && /<main[^>]*\sdata-pagefind-body/.test(html));
  if (shown.length > MOST) throw new RangeError(`pages must be at most ${MOST}, got ${shown.length}`);
  const rows = shown.map(({ name }) => `  <url><loc>${escaped(new URL(name.replace(/index\.html$/, ""), home).href)}</loc></url>`);
  return `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${rows.join("\n")}\n</urlset>\n`;
};
