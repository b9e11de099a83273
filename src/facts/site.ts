import site from "../../content/site.json" with { type: "json" };

export interface SiteSettings {
  readonly name: string;
  /** The edition that a report names; the same as the version of the package. */
  readonly edition: string;
  /** Where the site lives, with its folder; empty where nobody has said so yet. */
  readonly address: string;
  /** Where reports of faults go: an e-mail address, or words such as a room and a telephone; empty where nobody is named. */
  readonly reportTo: string;
  /** True for computers that many people use: nothing is offered to be kept on the device. */
  readonly isShared: boolean;
}

/** What whoever runs the site has set. */
export const SITE: SiteSettings = site;
