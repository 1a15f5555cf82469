// A plain site as its own guide starts one: default Markdown, one layout, no computation.
export default function (config) {
  config.setQuietMode(true);
  config.addFilter('entries', (object) => Object.entries(object ?? {}));
  config.addCollection('teardowns', (api) => api.getFilteredByGlob('./input/teardowns/*/index.md'));
  return { dir: { input: 'input', output: '_site', includes: '_includes' }, markdownTemplateEngine: false };
}
