import { SITE } from "../facts/site.ts";

/** Stands in where nobody has said where the site lives; names under "example" belong to nobody (RFC 2606, section 2). */
const NOBODYS = "https://workbook.example";

/** Where the site will live: as the build is told, or as `content/site.json` says. */
export const address: string = process.env["SITE"] || SITE.address || NOBODYS;

/** The folder of the site on its server, with a stroke in front and none behind; empty at the root. */
export const folder: string = (process.env["BASE"] ?? new URL(address).pathname).replace(/\/$/, "");
