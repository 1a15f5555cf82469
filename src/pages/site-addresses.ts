/** How the rooted addresses of the site are written where it stands. */
export interface SiteAddresses {
  /** With the base path before it: "/sub/methods/". */
  readonly href: (rooted: string) => string;
  /** Whole, base path included; null while the address of the site is not known. */
  readonly whole: (rooted: string) => string | null;
  /** Name of the host; null while the address of the site is not known. */
  readonly host: string | null;
}
