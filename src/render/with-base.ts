// The HTML is our own writer's: attribute values stand in double quotes, and `<` never stands in text. So a tag is read exactly.
const TAG = /<[a-z][a-z0-9]*(?:\s+[^\s=>"]+(?:="[^"]*")?)*\s*\/?>/g;
// Besides what a browser follows: where the scripts of the finder and the comparison fetch from and lead to.
const ROOTED = /(\s(?:href|src|action|data-rows|data-sheets|data-compare)=")\/(?!\/)/g;
const ROOTED_SET = /(\ssrcset=")([^"]*)(")/g;

/**
 * Puts the base path before every rooted address of our own HTML. Everything that is drawn as a string names the site's pages
 * from its root, because only the site generator knows where the site stands.
 *
 * @param base "/", "/sub/" or "/sub"
 */
export function withBase(html: string, base: string): string {
  const root = base.endsWith('/') ? base : `${base}/`;
  if (root === '/') return html;
  return html.replace(TAG, (tag) =>
    tag
      .replace(ROOTED, `$1${root}`)
      .replace(ROOTED_SET, (_, start: string, set: string, end: string) => start + set.replace(/(^|,\s*)\/(?!\/)/g, `$1${root}`) + end),
  );
}
